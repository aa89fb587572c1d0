import type { Surface } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { medianForTrend } from "../pace/medianForTrend.ts";
import { paceRuns } from "./paceRuns.ts";

/**
 * A session as the level of one surface takes it: as it is for a dry track; for a damp or wet one with the usual lap and
 * best of its laps there, which compare with no others.
 */
export function onSurface(digest: SessionDigest, surface: Surface): SessionDigest {
  if (surface === "dry") return digest;
  const times = paceRuns(digest, surface).flatMap((run) => run.times);
  const best = times.length === 0 ? undefined : Math.min(...times);
  return { ...digest, pace: { ...digest.pace, best, medianForTrend: medianForTrend(times) } };
}
