import { type LapPlace, lapPlaces, remarkKinds } from "#domain";
import { mean, requireNumber, requireNumberAt } from "#numbers";
import { bestOfK } from "../pace/bestOfK.ts";

/** Pace laps a session needs for an account. */
export const LEAST_FOR_ACCOUNT = 5;
/** Laps in the "best of k", where there are as many. */
const BEST_OF = 10;

/** A lap as the time account takes it. */
export interface LapInAccount {
  /** ms; undefined for no time. */
  readonly ms: number | undefined;
  readonly place: LapPlace;
  /** The driver said: not my PB. */
  readonly isNotBest: boolean;
  /** The driver confirmed it as far beyond the usual. */
  readonly isOdd: boolean;
}

/** The lines of a time account, whole ms a lap. */
export interface AccountLines {
  /** Best of k of the pace laps, against the target. */
  readonly pace: number;
  /** Mean of the pace laps, against the best of k. */
  readonly repeatability: number;
  /** What laps with an own mistake add to the mean. */
  readonly mistakes: number;
  /** What laps held up by others on track add to the mean. */
  readonly others: number;
  /** Mean of all these laps against the target: the sum of the four lines. */
  readonly balance: number;
}

/** The lines that laps go into. */
export type LineOfLap = "repeatability" | "mistakes" | "others";

/** One session's cumulative steps from its target: best of k, usual, with mistakes, all; undefined with too few pace laps. */
export interface AccountSteps {
  readonly steps: readonly [number, number, number, number] | undefined;
  /** Laps in the steps. */
  readonly laps: number;
  readonly paceLaps: number;
  readonly cutLaps: number;
  readonly notBestLaps: number;
  readonly withoutTime: number;
  /** Laps confirmed as odd, in the steps or not. */
  readonly oddLaps: number;
}

/** As what a lap of each place enters an account; undefined for one that has no part in it. */
const entries = new Map(
  lapPlaces.map((place) => {
    if (place === "pace") return [place, "repeatability"] as const;
    if (place === "noTime") return [place, "withoutTime"] as const;
    return [place, remarkKinds.find((remark) => remark.place === place)?.line] as const;
  }),
);

function entryOf({ place, isNotBest }: LapInAccount) {
  return isNotBest && place === "pace" ? "notBest" : entries.get(place);
}

/** The line of the account that a lap goes into; undefined for one that is counted beside it, or not at all. */
export function lineOf(lap: LapInAccount): LineOfLap | undefined {
  const entry = entryOf(lap);
  return entry === "repeatability" || entry === "mistakes" || entry === "others" ? entry : undefined;
}

/**
 * The cumulative steps of one session against its target.
 * @param session its number, for the message
 * @param least pace laps without which there are no steps
 * @throws RangeError for a time or a target that is not finite
 */
export function accountSteps(
  laps: readonly LapInAccount[],
  target: number | undefined,
  session: number,
  least: number,
): AccountSteps {
  requireNumber(target, `targetMs[${session}]`);
  const name = `ms of sessions[${session}]`;
  const times = { repeatability: [] as number[], mistakes: [] as number[], others: [] as number[] };
  const beside = { cut: 0, notBest: 0, withoutTime: 0 };
  let oddLaps = 0;
  laps.forEach((lap, index) => {
    if (lap.isOdd) oddLaps++;
    if (lap.ms !== undefined) requireNumberAt(lap.ms, name, index);
    const entry = entryOf(lap);
    if (entry === undefined) return;
    if (entry === "cut" || entry === "notBest" || entry === "withoutTime") beside[entry]++;
    else times[entry].push(lap.ms as number);
  });
  const pace = times.repeatability;
  const counted = {
    paceLaps: pace.length,
    cutLaps: beside.cut,
    notBestLaps: beside.notBest,
    withoutTime: beside.withoutTime,
    oddLaps,
  };
  const all = [...pace, ...times.mistakes, ...times.others];
  const best = bestOfK(pace, Math.min(BEST_OF, Math.max(1, pace.length)));
  const usual = mean(pace);
  const withMistakes = mean([...pace, ...times.mistakes]);
  const whole = mean(all);
  if (
    pace.length < least ||
    best === undefined ||
    usual === undefined ||
    withMistakes === undefined ||
    whole === undefined
  ) {
    return { ...counted, steps: undefined, laps: 0 };
  }
  const steps = [best - target, usual - target, withMistakes - target, whole - target] as const;
  return { ...counted, steps, laps: all.length };
}
