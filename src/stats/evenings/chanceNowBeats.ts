import { type Figure, known, leastForSpread, unknown } from "#domain";

/** Times of the pace laps of a session, ms. */
type Laps = ArrayLike<number> & Iterable<number>;

/**
 * Chance that a lap of now beats one of then: of all pairs of a lap now and a lap then the share in which that of now is
 * faster, a tie counting half, each pair of sessions weighing the same (common-language effect size; McGraw & Wong 1992, "A
 * common language effect size statistic"; title from memory). Our methods, §5.
 * @param then pace laps of some sessions, ms
 * @param now pace laps of other ones, ms
 * @returns from 0 to 1; a reason where one side has no session with five pace laps
 * @example chanceNowBeats([[90, 91, 92, 93, 94]], [[90, 90, 90, 90, 90]]) // 0.9
 */
export function chanceNowBeats(then: readonly Laps[], now: readonly Laps[]): Figure<number> {
  const isWhole = (laps: Laps) => laps.length >= leastForSpread;
  const [old, fresh] = [then.filter(isWhole), now.filter(isWhole)];
  if (old.length === 0 || fresh.length === 0)
    return unknown({
      needs: 1,
      of: "session",
      each: { needs: leastForSpread, of: "pace lap" },
      has: 0,
      where: "on one side",
    });
  return known(shareFaster(weighted(old), weighted(fresh)));
}

interface WeightedLap {
  readonly ms: number;
  readonly weight: number;
}

/** All laps in order of time, those of one session together weighing as much as those of another. */
function weighted(sessions: readonly Laps[]): WeightedLap[] {
  return sessions
    .flatMap((laps) => Array.from(laps, (ms) => ({ ms, weight: 1 / (laps.length * sessions.length) })))
    .sort((a, b) => a.ms - b.ms);
}

const TIE = 0.5;

/** The weight of all pairs in which the lap now is faster, in one pass through both. */
function shareFaster(then: readonly WeightedLap[], now: readonly WeightedLap[]): number {
  let share = 0;
  let [slower, asFast] = [1, 0];
  let next = 0;
  let at = Number.NEGATIVE_INFINITY;
  for (const { ms, weight } of now) {
    if (ms !== at) {
      asFast = 0;
      at = ms;
      for (; next < then.length && (then[next] as WeightedLap).ms <= ms; next++) {
        const old = then[next] as WeightedLap;
        slower -= old.weight;
        if (old.ms === ms) asFast += old.weight;
      }
    }
    share += weight * (slower + TIE * asFast);
  }
  return Math.min(1, Math.max(0, share));
}
