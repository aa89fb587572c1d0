import { type Figure, known, leastForSpread, unknown } from "#domain";

/**
 * Chance that a lap of now beats one of then: of all pairs of a lap now and a lap then the share in which that of now is
 * faster, a tie counting half, each pair of sessions weighing the same (common-language effect size; McGraw & Wong 1992, "A
 * common language effect size statistic"; title from memory). Our methods, §5.
 * @param then pace laps of some sessions, ms
 * @param now pace laps of other ones, ms
 * @returns from 0 to 1; a reason where one side has no session with five pace laps
 * @example chanceNowBeats([[90, 91, 92, 93, 94]], [[90, 90, 90, 90, 90]]) // 0.9
 */
export function chanceNowBeats(
  then: readonly (readonly number[])[],
  now: readonly (readonly number[])[],
): Figure<number> {
  const isWhole = (laps: readonly number[]) => laps.length >= leastForSpread;
  const pairs = then
    .filter(isWhole)
    .flatMap((old) => now.filter(isWhole).map((fresh) => shareFaster(old, fresh)));
  if (pairs.length === 0)
    return unknown({
      needs: 1,
      of: "session",
      each: { needs: leastForSpread, of: "pace lap" },
      has: 0,
      where: "on one side",
    });
  return known(pairs.reduce((sum, share) => sum + share, 0) / pairs.length);
}

const TIE = 0.5;

function shareFaster(then: readonly number[], now: readonly number[]): number {
  let faster = 0;
  for (const old of then) for (const fresh of now) faster += fresh < old ? 1 : fresh === old ? TIE : 0;
  return faster / (then.length * now.length);
}
