import type { RigTest, Run } from "#domain";
import type { Choices } from "../laps/choices.ts";
import { testFigure } from "./testFigure.ts";
import type { WhyAside } from "./testProgress.ts";

/**
 * Why a run by itself does not count in its rig test: void, too few clean laps, or not to be compared. Whether its place in the
 * pair is free is not asked.
 * @returns undefined where it counts
 */
export function whyAside(run: Run, test: Pick<RigTest, "figure">, choices: Choices): WhyAside | undefined {
  const words = run.rigTest?.void;
  if (words !== undefined) return { because: "void", words };
  const { figure } = testFigure(run, test, choices);
  return figure.known ? undefined : { because: "figure", reason: figure.reason };
}
