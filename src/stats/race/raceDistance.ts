import { type Figure, known, unknown } from "#domain";
import { CONFIDENCE, quantileWithin, requireNumber } from "#numbers";
import { nextChiSquared, nextNormal, nextUniform } from "../random/draws.ts";
import { stream } from "../random/stream.ts";
import { type Share, wilsonInterval } from "../sample/wilsonInterval.ts";
import { cleanRunChance } from "./cleanRunChance.ts";
import { type CentredRuns, centreRuns, type RaceLap } from "./raceLaps.ts";

/** A race of a number of laps, or one that ends with the first lap finished after so many minutes. */
export interface RaceQuestion {
  /** Timed laps of the latest race runs, mistakes included, in order. */
  readonly laps: readonly RaceLap[];
  readonly count?: number;
  readonly minutes?: number;
  readonly seed: number;
  /** A rival's mean lap, in ms. */
  readonly rivalMeanMs?: number;
}

export interface RaceDistance {
  /** Total time in ms: the range that holds eight in ten, and the median of races with as many laps as the middle one. */
  readonly low: number;
  readonly mid: number;
  readonly high: number;
  /** Laps driven, with the same range. */
  readonly laps: { readonly low: number; readonly mid: number; readonly high: number };
  /** Chance of a run without a mistake. */
  readonly cleanChance: number;
  /** Mistakes a lap, with Wilson's 90 % interval. */
  readonly mistakes: Share;
  /** Mean laps of twenty equally likely races, ms, the fastest first. */
  readonly likely: readonly number[];
  /** Chance to be ahead of the rival at the end; undefined without one. */
  readonly aheadChance: number | undefined;
}

/** Timed laps that a race distance needs. */
export const leastRaceLaps = 5;
const LIKELY = 20;
const draws = 2000;
const block = 3;
const priorDegrees = 3;
const priorScale = 0.003;

/**
 * How long a race will take, by drawing races from the laps so far: blocks of three laps in a row, centred on the
 * mean of their run (a circular block bootstrap, Politis & Romano 1992), plus one shift for the whole race from the
 * t distribution of the runs' means (scaled inverse-χ² prior, 3 degrees of freedom, scale 0.3 %). Without the shift
 * the range holds far too few races. Our methods, §10. 2,000 seeded draws.
 * @returns a reason with fewer than 5 timed laps
 * @throws RangeError for a value that is not finite, naming it, or unless exactly one of count and minutes is given
 */
export function raceDistance(question: RaceQuestion): Figure<RaceDistance> {
  const { laps, count, minutes, seed, rivalMeanMs } = question;
  requireLength(count, minutes);
  requireNumber(seed, "seed");
  if (rivalMeanMs !== undefined) requireNumber(rivalMeanMs, "rivalMeanMs");
  const runs = centreRuns(laps);
  const mistakes = wilsonInterval(runs.mistakes, runs.all, CONFIDENCE);
  if (mistakes === undefined || runs.timed < leastRaceLaps) {
    return unknown({ needs: leastRaceLaps, of: "timed lap", has: runs.timed });
  }
  const race = raceDrawer(runs, seed);
  const until = minutes === undefined ? Number.POSITIVE_INFINITY : minutes * 60_000;
  const drawn = Array.from({ length: draws }, (_, draw) =>
    race(draw, count ?? Number.POSITIVE_INFINITY, until),
  );
  const totals = Float64Array.from(drawn, ({ total }) => total);
  const driven = Float64Array.from(drawn, (each) => each.laps);
  const at = (values: Float64Array, share: number) => Math.round(quantileWithin(values, share));
  const rangeOf = (values: Float64Array) => ({
    low: at(values, 0.1),
    mid: at(values, 0.5),
    high: at(values, 0.9),
  });
  const length = rangeOf(driven);
  // Races of minutes end a lap apart: between two of those lies no race.
  const usual = Float64Array.from(
    drawn.filter((each) => each.laps === length.mid),
    ({ total }) => total,
  );
  const means = Float64Array.from(drawn, ({ total, laps: n }) => total / n);
  return known({
    ...rangeOf(totals),
    mid: at(usual, 0.5),
    laps: length,
    cleanChance: cleanRunChance(runs.mistakes, runs.all, length.mid),
    mistakes,
    likely: Array.from({ length: LIKELY }, (_, index) => at(means, (index + 0.5) / LIKELY)),
    aheadChance:
      rivalMeanMs === undefined
        ? undefined
        : drawn.filter(({ total, laps: n }) => total / n < rivalMeanMs).length / draws,
  });
}

function requireLength(count: number | undefined, minutes: number | undefined): void {
  if ((count === undefined) === (minutes === undefined)) {
    throw new RangeError("a race has either a count of laps or minutes: give exactly one");
  }
  const given = { count, minutes };
  for (const name of ["count", "minutes"] as const) {
    const value = given[name];
    if (value === undefined) continue;
    requireNumber(value, name);
    if (value <= 0) throw new RangeError(`${name} is ${value}: more than 0 is needed`);
  }
  if (count !== undefined && !Number.isInteger(count)) {
    throw new RangeError(`count is ${count}: a whole number of laps is needed`);
  }
}

/** Draws one race after the other: laps until the count or the time is full. */
function raceDrawer({ residuals, means, timed }: CentredRuns, seed: number) {
  const usual = means.reduce((sum, ms) => sum + ms, 0) / means.length;
  const sumOfSquares =
    priorDegrees * (priorScale * usual) ** 2 + means.reduce((sum, ms) => sum + (ms - usual) ** 2, 0);
  const places = residuals.flatMap((run) => run.map((_, start) => ({ run, start })));
  return (draw: number, count: number, until: number) => {
    const source = stream(seed, draw);
    const sigma = Math.sqrt(sumOfSquares / nextChiSquared(source, priorDegrees + means.length - 1));
    const pace = usual + sigma * Math.sqrt(1 + 1 / means.length) * nextNormal(source);
    let total = 0;
    let laps = 0;
    while (laps < count && total < until) {
      const place = places[Math.floor(nextUniform(source) * timed)];
      if (place === undefined) throw new RangeError("no lap to draw from");
      for (let i = 0; i < block && laps < count && total < until; i++, laps++) {
        // A lap is never shorter than a tenth of the usual one, so that a race of minutes comes to its end.
        total += Math.max(usual / 10, pace + (place.run[(place.start + i) % place.run.length] ?? 0));
      }
    }
    return { total, laps };
  };
}
