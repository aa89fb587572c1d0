/**
 * Simulated drivers who type every lap in the shortest form the entry line takes. Their figures are invented:
 * a base lap of 45–150 s, skewed scatter of 0.2–1.5 s, a mistake of 2–30 s in every twelfth lap (evenly by its
 * logarithm), of which some are typed without a remark.
 */

import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { formatLapTime, isClean } from "#domain";
import { type EntryContext, isOdd, knownTimes, parseEntry, usualLap } from "#entry";

export interface Tally {
  readonly laps: number;
  /** Laps stored with another time than driven. */
  readonly wrong: number;
  /** Of these, laps that became the PB. */
  readonly wrongPbs: number;
  /** Laps typed in four digits, in five, and in full. */
  readonly four: number;
  readonly five: number;
  readonly full: number;
  /** Laps for which a second Enter was asked. */
  readonly asked: number;
}

interface Drive {
  readonly ms: number;
  readonly remark: string;
}

type Chance = () => number;

const mistakeShare = 1 / 12;
const lapsOfRun = 10;

/** Skewed noise with mean 0 and deviation 1: normal and exponential, so that the slow side is longer. */
function skewed(chance: Chance): number {
  const normal = Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
  const slow = -Math.log(1 - chance()) - 1;
  return 0.8 * normal + 0.6 * slow;
}

function driveLap(chance: Chance, base: number, scatter: number, unremarked: number): Drive {
  const ms = base + scatter * skewed(chance);
  if (chance() >= mistakeShare) return { ms: Math.round(ms), remark: "" };
  const cost = 2_000 * 15 ** chance();
  return { ms: Math.round(ms + cost), remark: chance() < unremarked ? "" : chance() < 0.5 ? "f" : "s" };
}

/** What the driver tries, shortest first. */
function tries(
  ms: number,
  remark: string,
): { readonly text: string; readonly form: "four" | "five" | "full" }[] {
  const seconds = String(Math.floor(ms / 1000) % 60).padStart(2, "0");
  const digits = seconds + String(ms % 1000).padStart(3, "0");
  return [
    { text: digits.slice(1) + remark, form: "four" },
    { text: digits + remark, form: "five" },
    { text: `${ms < 60_000 ? "0:" : ""}${formatLapTime(ms)}${remark}`, form: "full" },
  ];
}

/** One driver's sessions on one combo, the PB carried from each to the next. */
function driveSessions(chance: Chance, unremarked: number, sessions: number) {
  const tally = { laps: 0, wrong: 0, wrongPbs: 0, four: 0, five: 0, full: 0, asked: 0 };
  const scatter = 200 + 1_300 * chance();
  let base = 45_000 + 105_000 * chance();
  let pbMs: number | undefined;
  let page: readonly number[] = [];
  for (let session = 0; session < sessions; session += 1) {
    base *= 1 - 0.006 * chance();
    const paceTimes: number[] = [];
    let runTimes: number[] = [];
    const laps = 8 + Math.floor(30 * chance());
    for (let lap = 0; lap < laps; lap += 1) {
      const { ms, remark } = driveLap(chance, base, scatter, unremarked);
      if (lap % lapsOfRun === 0) runTimes = [];
      const times = { paceTimes, runTimes, known: { page }, pbMs };
      const context: EntryContext = {
        ...times,
        usualMs: usualLap(knownTimes(times), times),
        displayDecimals: 3,
        relativeTo: "lap",
        isPractice: true,
      };
      tally.laps += 1;
      for (const { text, form } of tries(ms, remark)) {
        const reading = parseEntry(text, context);
        if (!reading.ok) continue;
        const stored = reading.lap.ms;
        if (reading.asks.length > 0) tally.asked += 1;
        // Asked for a second Enter, the driver looks, and types in full what was read wrongly.
        if (stored === undefined || (reading.asks.length > 0 && stored !== ms)) continue;
        tally[form] += 1;
        const isPb = isClean(reading.lap) && (pbMs === undefined || stored < pbMs);
        if (stored !== ms) tally.wrong += 1;
        if (stored !== ms && isPb) tally.wrongPbs += 1;
        if (isPb) pbMs = stored;
        if (isClean(reading.lap) && !isOdd(reading)) {
          paceTimes.push(stored);
          runTimes.push(stored);
        }
        break;
      }
    }
    page = [...page, ...paceTimes].sort((a, b) => a - b);
  }
  return tally;
}

/**
 * Lets drivers type their evenings.
 * @param unremarked share of the mistakes that are typed without a remark
 */
export function typeLaps(seed: number, drivers: number, unremarked: number): Tally {
  const random = xoroshiro128plus(seed);
  const chance = () => uniformFloat64(random);
  const all = Array.from({ length: drivers }, () => driveSessions(chance, unremarked, 4));
  const sum = (pick: keyof Tally) => all.reduce((total, tally) => total + tally[pick], 0);
  return {
    laps: sum("laps"),
    wrong: sum("wrong"),
    wrongPbs: sum("wrongPbs"),
    four: sum("four"),
    five: sum("five"),
    full: sum("full"),
    asked: sum("asked"),
  };
}
