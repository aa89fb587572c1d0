import type { Run } from "./rows.ts";

/** What sets the times of a run apart from those driven for their time on a dry track. */
export type Apart = "guest" | SetApart;

type SetApart = "test" | "warmUp" | "drill" | "wet" | "easy";

/** What a run is told apart by. */
export type RunKindOf = Pick<Run, "kind" | "effort" | "surface" | "rigTest">;

/**
 * Why a run is never measured against a personal best, a target or another run: somebody else drove it, it is
 * one of a rig test and has a setting of its own, it was slow on purpose, or the track was not dry, and then only such laps
 * compare with each other. Our methods, §1 and §7.
 * @returns undefined for a dry pace or race run of one's own at full or brisk effort
 */
export function standsApart(run: RunKindOf & Pick<Run, "guest">): Apart | undefined {
  return run.guest === undefined ? setApart(run) : "guest";
}

/** The same, whoever drove. */
export function setApart({ kind, effort, surface, rigTest }: RunKindOf): SetApart | undefined {
  if (rigTest !== undefined) return "test";
  if (kind === "warm-up") return "warmUp";
  if (kind === "drill") return "drill";
  if (surface !== "dry") return "wet";
  return effort === "easy" || effort === "learning" ? "easy" : undefined;
}

/** A run of a rig test as it is read by itself, for what it was driven as; any other as it is. */
export function outOfTest(run: Run): Run {
  if (run.rigTest === undefined) return run;
  const { rigTest: _, ...itself } = run;
  return itself;
}
