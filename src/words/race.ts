import { type Figure, formatLapTime, formatSeconds } from "#domain";
import type { LongRunTrend, RaceDistance, RaceOutlook } from "#stats";
import { sayAmount, thousandths } from "./amount.ts";
import { chanceWord, sayChance, TWENTY } from "./chance.ts";
import { asSentence, counted } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { isClear, isSame, pace, sayAtLeast, sayBetween, sayNotClear } from "./shift.ts";

/** A race as it is asked about. */
interface AskedRace {
  readonly count?: number | undefined;
  readonly minutes?: number | undefined;
}

const second = 1000;
/** To whole seconds, as the length of a race is told; the ends of a range outwards. */
const clock = (ms: number, round: (seconds: number) => number = Math.round) =>
  formatLapTime(round(ms / second) * second, 0);

/**
 * How long a race takes.
 * @example "20 laps take about 28:05. 16 races in 20 take between 27:50 and 28:24."
 * @example "30 minutes hold about 22 laps and are over at about 30:41. 16 races in 20 hold between 21 and 22 laps."
 */
export function sayRaceLength({ low, mid, high, laps }: RaceDistance, { count, minutes }: AskedRace): string {
  if (count !== undefined)
    return `${counted(count, "lap")} ${count === 1 ? "takes" : "take"} about ${clock(mid)}. 16 races in ${TWENTY} take between ${clock(low, Math.floor)} and ${clock(high, Math.ceil)}.`;
  const range =
    laps.low === laps.high
      ? `hold ${counted(laps.mid, "lap")}`
      : `hold between ${laps.low} and ${counted(laps.high, "lap")}`;
  return `${counted(minutes ?? 0, "minute")} ${minutes === 1 ? "holds" : "hold"} about ${counted(laps.mid, "lap")}, over at about ${clock(mid)}. 16 races in ${TWENTY} ${range}.`;
}

/**
 * The chance of a run without a mistake, with the rate behind it.
 * @example "All 20 laps clean: unlikely, 3 chances in 20. So many laps bring about 2 mistakes, very likely between 1 and 4."
 */
export function sayCleanRun({ cleanChance, mistakes, laps }: RaceDistance): string {
  const about = (share: number, round = Math.round) => round(share * laps.mid);
  const [low, high] = [about(mistakes.low, Math.floor), about(mistakes.high, Math.ceil)];
  const mid = about(mistakes.share);
  return `${laps.mid === 1 ? "The lap" : `All ${laps.mid} laps`} clean: ${chanceWord(cleanChance)}, ${sayChance(cleanChance)}. So far such a distance brings about ${counted(mid, "mistake")} of your own, very likely between ${low} and ${high}.`;
}

/**
 * The chance to beat a given mean lap over the whole race.
 * @example "A mean lap under 1:24.500: likely, 15 chances in 20."
 */
export function sayAhead(aheadChance: number, rivalMeanMs: number): string {
  return `A mean lap under ${formatLapTime(rivalMeanMs)}: ${chanceWord(aheadChance)}, ${sayChance(aheadChance)}.`;
}

/**
 * What a race distance rests on.
 * @example "From 48 laps of your last 6 pace runs, mistakes included. No race run is among them: traffic is not in it."
 */
export function sayRaceRests({ kind, runs, laps, isMoved }: RaceOutlook["basis"]): string {
  const last = runs === 1 ? `your last ${kind} run` : `your last ${counted(runs, `${kind} run`)}`;
  const alone =
    kind === "race"
      ? ""
      : " They are no race laps: traffic, the start and driving against others are not in it.";
  const moved = isMoved ? ", their times moved by as much as your level has since" : "";
  return `From ${counted(laps, "lap")} of ${last}, mistakes included${moved}.${alone}`;
}

const litres = (value: number) => `${value.toFixed(1)} l`;

/**
 * Fuel to take.
 * @example "Take 52.0 l: 20 laps of 2.40 l, and 4.0 l in reserve."
 */
export function sayFuel(
  needed: number,
  { laps, perLap, reserve }: { readonly laps: number; readonly perLap: number; readonly reserve: number },
): string {
  const kept = reserve === 0 ? "nothing in reserve" : `${litres(reserve)} in reserve`;
  // What is taken is never rounded to less than is needed.
  return `Take ${litres(Math.ceil(needed * 10 - 1e-9) / 10)}: ${counted(laps, "lap")} of ${perLap.toFixed(2)} l, and ${kept}.`;
}

/** Why the fuel of a race of minutes is for more laps than it holds in its middle. */
export function sayFuelLaps(laps: number): string {
  return `Reckoned with ${counted(laps, "lap")}: 18 races in ${TWENTY} hold no more.`;
}

/** What the sum of the fuel cannot know. Common practice, no source. */
export const fuelCaution =
  "An estimate: use changes with pace, traffic and the track. Measure it over a full run, and add a lap each for a formation lap and a lap back to the pits where the race has them.";

/**
 * The pace over a long run, and what it comes to over the race.
 * @example "Slower by 0.018 s a lap through a run, very likely at least 0.006 s, in 7 runs: 0.34 s from the first lap to lap 20."
 */
export function sayLongRun(trend: Figure<LongRunTrend>, laps: number | undefined): string {
  if (!trend.known) return `${sayTooFew(trend.reason)} in one run.`;
  const { msPerLap, low, high, runs, longest } = trend.value;
  const where =
    runs === 1
      ? `in one run of ${counted(longest, "lap")}`
      : `in ${runs} runs of up to ${counted(longest, "lap")}`;
  const shift = { estimate: msPerLap, low, high };
  if (isSame(shift)) return `The same pace through a run, ${where}.`;
  if (!isClear(shift))
    return `${asSentence(sayNotClear(pace, " through a run"))}: ${sayBetween(shift, thousandths, pace)} a lap, ${where}.`;
  const direction = low > 0 ? pace.rise : pace.fall;
  const reach = laps === undefined ? longest : Math.min(laps, longest);
  return `${asSentence(direction)} by ${sayAmount(msPerLap, thousandths)} a lap through a run, ${sayAtLeast(shift, thousandths)}, ${where}: about ${formatSeconds(Math.abs(msPerLap) * (reach - 1), 2)} from the first lap to lap ${reach}.`;
}

/**
 * What the pace over a long run is made of, and how far it reaches.
 * @example "… Your longest run had 15 laps: what comes after it, nobody knows."
 */
export function sayLongRunMeaning(trend: Figure<LongRunTrend>, laps: number | undefined): string {
  const both = "Fuel burnt off makes a lap faster, worn tyres slower: both are in it.";
  if (!trend.known || laps === undefined || laps <= trend.value.longest) return both;
  return `${both} The longest of these runs had ${counted(trend.value.longest, "lap")}: what comes after them in a race cannot be told yet.`;
}
