import { type Figure, known, unknown } from "#domain";
import { CONFIDENCE, median } from "#numbers";
import { timesOf } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { Shift } from "../period/shift.ts";
import { signedRankTest } from "../rigTests/signedRankTest.ts";

/** Warm-up laps that are left out, and the pace laps a session needs with them. */
const WARMING_UP = 3;
const LEAST_LAPS = 12;
const LEAST_SESSIONS = 5;
/** Rank tests look at all pairs of sessions: more than these say no more. */
const MOST_SESSIONS = 200;

/** Last third of a session against its first, ms a lap; slower is positive. */
export interface SittingThirds extends Shift {
  readonly sessions: number;
  /** Sessions of the period with fewer than twelve pace laps. */
  readonly sessionsLeftOut: number;
}

/**
 * Whether laps late in a sitting are slower: for each session with twelve pace laps, without its first three, the
 * median of the last third against that of the first; then the signed-rank test over sessions (Wilcoxon 1945) with its
 * 90 % interval. A session is compared with itself, so gains over the weeks have no part in it; gains within it have.
 * @param digests of the period; only the latest 200 that qualify are looked at
 * @returns a reason for fewer than five such sessions
 */
export function sittingThirds(digests: readonly SessionDigest[]): Figure<SittingThirds> {
  const all = digests.flatMap((digest) => lateAgainstEarly([...timesOf([digest], "pace")]));
  const differences = all.slice(-MOST_SESSIONS);
  if (differences.length < LEAST_SESSIONS)
    return unknown({
      needs: LEAST_SESSIONS,
      of: "session",
      each: { needs: LEAST_LAPS, of: "pace lap" },
      has: differences.length,
    });
  const test = signedRankTest(differences, CONFIDENCE);
  const { estimate, low, high } = test ?? { estimate: 0, low: 0, high: 0 };
  const sessions = differences.length;
  return known({ estimate, low, high, sessions, sessionsLeftOut: digests.length - sessions });
}

function lateAgainstEarly(times: readonly number[]): number[] {
  if (times.length < LEAST_LAPS) return [];
  const warm = times.slice(WARMING_UP);
  const third = Math.floor(warm.length / 3);
  const [early, late] = [median(warm.slice(0, third)), median(warm.slice(-third))];
  return early === undefined || late === undefined ? [] : [late - early];
}
