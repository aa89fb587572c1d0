import { type LapPlace, type LapWorth, lapPlaces, lapWorths } from "#domain";
import type { LapInAccount } from "../account/accountSteps.ts";
import { NO_TIME, type SessionDigest } from "./sessionDigest.ts";

const practicePlaces: readonly LapPlace[] = ["pace", "easy", "wet"];

/**
 * Sets of a digest's laps, told by place and worth. `timed`: as in the rate of mistakes · `bests`: may stand as a best ·
 * `paceBests`: pace laps that may · `practice`: clean and of a pace run, whatever its effort and surface.
 */
const sets = {
  timed: (_: LapPlace, worth: LapWorth) => worth !== "none",
  bests: (_: LapPlace, worth: LapWorth) => worth === "best",
  pace: (place: LapPlace) => place === "pace",
  paceBests: (place: LapPlace, worth: LapWorth) => place === "pace" && worth === "best",
  practice: (place: LapPlace, worth: LapWorth) =>
    practicePlaces.includes(place) && (worth === "clean" || worth === "best"),
} as const;

export type SetOfLaps = keyof typeof sets;

/** For each set which pairs of place and worth belong to it: asked of each lap, so it is looked up. */
const members = Object.fromEntries(
  Object.entries(sets).map(([name, has]) => [
    name,
    Uint8Array.from(lapPlaces.flatMap((place) => lapWorths.map((worth) => (has(place, worth) ? 1 : 0)))),
  ]),
) as Readonly<Record<SetOfLaps, Uint8Array>>;

/** Tells of each lap of a digest, by its index, whether it belongs to a set. */
export function inSet({ places, worths }: SessionDigest, set: SetOfLaps): (lap: number) => boolean {
  const belongs = members[set];
  return (lap) => belongs[(places[lap] as number) * lapWorths.length + (worths[lap] as number)] === 1;
}

/** Times of the laps of many digests that belong to a set, ms: a lap without a time is in none. */
export function timesOf(digests: readonly SessionDigest[], set: SetOfLaps): Int32Array {
  const most = digests.reduce((sum, digest) => sum + digest.times.length, 0);
  const times = new Int32Array(most);
  let count = 0;
  for (const digest of digests) {
    const isIn = inSet(digest, set);
    for (let lap = 0; lap < digest.times.length; lap++) {
      if (isIn(lap)) times[count++] = digest.times[lap] as number;
    }
  }
  return times.slice(0, count);
}

/** The laps of a session for its time account, out of its digest. */
export function accountLaps({ times, places, worths, odd }: SessionDigest): LapInAccount[] {
  const laps: LapInAccount[] = [];
  for (let lap = 0; lap < times.length; lap++) {
    const ms = times[lap] as number;
    laps.push({
      ms: ms === NO_TIME ? undefined : ms,
      place: lapPlaces[places[lap] as number] as LapPlace,
      isNotBest: lapWorths[worths[lap] as number] === "clean",
      isOdd: odd.includes(lap),
    });
  }
  return laps;
}

/**
 * Sector times of the laps that belong to a set, of those with as many sectors as the latest session that has any.
 */
export function sectorsOf(digests: readonly SessionDigest[], set: SetOfLaps): number[][] {
  const count = digests.findLast((digest) => digest.sectorCount > 0)?.sectorCount ?? 0;
  const laps: number[][] = [];
  for (const digest of digests) {
    const { places, sectors, sectorCount } = digest;
    if (count === 0 || sectorCount !== count) continue;
    const isIn = inSet(digest, set);
    for (let i = 0; i < places.length; i++) {
      if (sectors[i * count] === NO_TIME || !isIn(i)) continue;
      // A plain array: a view on the sectors of each lap costs several times as much.
      const lap: number[] = [];
      for (let sector = i * count; sector < (i + 1) * count; sector++) lap.push(sectors[sector] as number);
      laps.push(lap);
    }
  }
  return laps;
}
