import type { Run, Session } from "#domain";
import { type SessionDigest, sessionDigest } from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";
import { aRun, aSession, choices } from "../someRows.ts";

/** Lap times about a level with a scatter, the same at every call. */
export function lapsAbout(level: number, count: number, seed: number, scatter = 150): number[] {
  return Array.from({ length: count }, (_, lap) => Math.round(level + scatter * normalAt(seed, lap, 7, 11)));
}

/** The digest of a session of one run on a day. */
export function aDigest(
  day: number,
  laps: Parameters<typeof aRun>[1],
  run: Partial<Run> = {},
  session: Partial<Session> = {},
): SessionDigest {
  return aDigestOf(day, [aRun(1, laps, { sessionId: `session ${day}`, ...run })], session);
}

/** The digest of a session of several runs. */
export function aDigestOf(day: number, runs: readonly Run[], session: Partial<Session> = {}): SessionDigest {
  return sessionDigest(aSession(day, session), runs, choices);
}
