import type { Remark } from "#domain";
import type { LapForAccount } from "../account/timeAccount.ts";
import { lapFlags } from "./digestFlags.ts";
import { NO_TIME, type SessionDigest } from "./sessionDigest.ts";

const NONE: readonly Remark[] = [];
const CUT: readonly Remark[] = [{ kind: "cut" }];
const MISTAKE: readonly Remark[] = [{ kind: "off" }];
const OTHERS: readonly Remark[] = [{ kind: "traffic" }];

/** Times of the laps of many digests that carry all the wanted flags and have a time, ms. */
export function timesWith(digests: readonly SessionDigest[], wanted: number): Int32Array {
  const most = digests.reduce((sum, digest) => sum + digest.times.length, 0);
  const times = new Int32Array(most);
  let count = 0;
  for (const { times: all, flags } of digests) {
    for (let i = 0; i < all.length; i++) {
      const ms = all[i] as number;
      if (((flags[i] as number) & wanted) === wanted && ms !== NO_TIME) times[count++] = ms;
    }
  }
  return times.slice(0, count);
}

/** The laps of a session's time account, out of its digest. */
export function accountLaps({ times, flags }: SessionDigest): LapForAccount[] {
  const laps: LapForAccount[] = [];
  for (let i = 0; i < times.length; i++) {
    const flag = flags[i] as number;
    if ((flag & lapFlags.account) === 0) continue;
    const ms = times[i] as number;
    const isPace = (flag & lapFlags.pace) !== 0;
    laps.push({
      ms: ms === NO_TIME ? undefined : ms,
      remarks: remarksOf(flag),
      pace: isPace,
      isNotBest: isPace && (flag & lapFlags.mayBeBest) === 0,
    });
  }
  return laps;
}

function remarksOf(flag: number): readonly Remark[] {
  if ((flag & lapFlags.cut) !== 0) return CUT;
  if ((flag & lapFlags.mistake) !== 0) return MISTAKE;
  return (flag & lapFlags.othersOnTrack) !== 0 ? OTHERS : NONE;
}

/**
 * Sector times of the laps that carry all the wanted flags, of those with as many sectors as the latest session that
 * has any.
 */
export function sectorsWith(digests: readonly SessionDigest[], wanted: number): number[][] {
  const count = digests.findLast((digest) => digest.sectorCount > 0)?.sectorCount ?? 0;
  const laps: number[][] = [];
  for (const { flags, sectors, sectorCount } of digests) {
    if (count === 0 || sectorCount !== count) continue;
    for (let i = 0; i < flags.length; i++) {
      if (((flags[i] as number) & wanted) !== wanted || sectors[i * count] === NO_TIME) continue;
      // A plain array: a view on the sectors of each lap costs several times as much.
      const lap: number[] = [];
      for (let sector = i * count; sector < (i + 1) * count; sector++) lap.push(sectors[sector] as number);
      laps.push(lap);
    }
  }
  return laps;
}
