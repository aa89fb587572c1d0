import type { Focus } from "#domain";
import type { RunFacts } from "../digest/runFacts.ts";

/** What laps may be told apart by. */
export const factors = ["effort", "surface", "tyres", "setup", "focus"] as const;
export type Factor = (typeof factors)[number];

const isDry = ({ surface }: RunFacts) => surface === "dry";
const isPushing = ({ effort }: RunFacts) => effort === "full" || effort === "brisk";

/**
 * A pace run's value of a factor; undefined where the run says nothing about it, or differs in something that would
 * hide it: but for the factor itself only dry runs at brisk or full effort count.
 */
export const valueByFactor: Readonly<Record<Factor, (run: RunFacts, focus: Focus) => string | undefined>> = {
  effort: (run) => (isDry(run) ? run.effort : undefined),
  surface: (run) => (isPushing(run) ? run.surface : undefined),
  tyres: (run) => (isDry(run) && isPushing(run) ? run.tyres : undefined),
  setup: (run) => (isDry(run) && isPushing(run) ? run.setup : undefined),
  focus: (run, focus) => (isDry(run) && isPushing(run) ? focus : undefined),
};
