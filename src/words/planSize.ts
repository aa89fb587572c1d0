import { type PlannedRun, unbroken } from "#domain";
import { planLaps, planMinutes } from "#stats";
import { counted } from "./counted.ts";

interface Evening {
  /** Length of a lap, ms; undefined where none was driven. */
  readonly lapMs: number | undefined;
  /** Minutes the driver said there are; undefined where none were said. */
  readonly minutes?: number | undefined;
}

/** Longer by so much is said to be longer: minutes of a plan are rough. */
const ROUGH = 5;

/**
 * How much a plan is, and whether it is more than there is time for.
 * @example "4 runs, 31 laps, about 55 min", "4 runs, 31 laps, about 55 min: more than the 45 min you have"
 */
export function sayPlanSize(lines: readonly PlannedRun[], { lapMs, minutes }: Evening): string {
  const size = `${counted(lines.length, "run")}, ${counted(planLaps(lines), "lap")}`;
  if (lapMs === undefined) return size;
  const needed = Math.max(1, Math.round(planMinutes(lines, lapMs)));
  const all = `${size}, about ${unbroken(`${needed} min`)}`;
  return minutes === undefined || needed <= minutes + ROUGH
    ? all
    : `${all}: more than the ${unbroken(`${minutes} min`)} you have`;
}
