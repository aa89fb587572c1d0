import type { Run } from "./rows.ts";

/** What sets the times of a run apart from those driven for their time on a dry track. */
export type Apart = "guest" | SetApart;

type SetApart = "warmUp" | "drill" | "wet" | "easy";

/**
 * Why a run is never measured against a personal best, a target or another run: somebody else drove it, it was slow on
 * purpose, or the track was not dry, and then only such laps compare with each other. Our methods, §1.
 * @returns undefined for a dry pace or race run of one's own at full or brisk effort
 */
export function standsApart(run: Pick<Run, "guest" | "kind" | "effort" | "surface">): Apart | undefined {
  return run.guest === undefined ? setApart(run) : "guest";
}

/** The same, whoever drove. */
export function setApart({
  kind,
  effort,
  surface,
}: Pick<Run, "kind" | "effort" | "surface">): SetApart | undefined {
  if (kind === "warm-up") return "warmUp";
  if (kind === "drill") return "drill";
  if (surface !== "dry") return "wet";
  return effort === "easy" || effort === "learning" ? "easy" : undefined;
}
