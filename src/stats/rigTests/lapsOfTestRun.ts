import type { RigTest } from "#domain";

/** Laps of a run where the plan of a test does not say: five count, and one is to spare. */
const UNLESS_SAID = 6;

/** Laps that each run of a rig test is planned with. */
export function lapsOfTestRun({ lapsARun }: Pick<RigTest, "lapsARun">): number {
  return lapsARun ?? UNLESS_SAID;
}
