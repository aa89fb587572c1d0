import { nextChiSquared, nextNormal, nextUniform } from "../random/draws.ts";
import { stream } from "../random/stream.ts";
import { solveUpper } from "./cholesky.ts";
import type { CurvePosterior } from "./curvePosterior.ts";
import { type FutureSession, futurePlaces, type PastSession, placeOf } from "./history.ts";

/** Draws of the practice curve, one entry a draw. */
export interface CurveDraws {
  readonly floors: Float64Array;
  /** Half-lives in laps of those draws whose level moves with practice. */
  readonly halfLives: Float64Array;
  /** Sizes of the events in ms, in their order. */
  readonly events: readonly Float64Array[];
  /** The curve at each session, past and to come, without the session's own shift. */
  readonly levels: readonly Float64Array[];
  /** Medians of each session to come. */
  readonly medians: readonly Float64Array[];
}

/** Draws used wherever nothing else is said. */
export const usualDraws = 2000;

/**
 * Draws from the posterior of the practice curve and carries each on through the sessions to come, the shift of a
 * session going on from that of the last one: e′ = ρ·e + √(1 − ρ²)·σ·N(0, 1). Our methods, §5.
 *
 * Each draw has its own stream of random numbers, used in the order of the sessions, so a session added at the end
 * changes nothing before it.
 */
export function curveDraws(
  posterior: CurvePosterior,
  history: readonly PastSession[],
  future: readonly FutureSession[],
  seed: number,
  draws = usualDraws,
): CurveDraws {
  const { cells, columns, degreesOfFreedom } = posterior;
  const upTo = cumulative(cells.map((cell) => cell.weight));
  const past = history.length;
  const places = [...history.map(placeOf), ...futurePlaces(history, future)];
  const shapes = columns.map((column) => places.map((place, session) => column.at(session, place)));
  const decayOf = decays(places);
  const lastMs = history.at(-1)?.medianMs ?? 0;
  const empty = () => new Float64Array(draws);
  const floors = empty();
  const halfLives: number[] = [];
  const events = columns.map(empty);
  const levels = places.map(empty);
  const medians = future.map(empty);

  for (let draw = 0; draw < draws; draw++) {
    const source = stream(seed, draw);
    const cell = cells[find(upTo, nextUniform(source))];
    if (cell === undefined) throw new RangeError("the practice curve has no cell to draw from");
    const { span, halfLife, correlation, without, perSpan, lower } = cell;
    const sigma = Math.sqrt(cell.sumOfSquares / nextChiSquared(source, degreesOfFreedom));
    const spread = without.map(() => sigma * nextNormal(source));
    const [floor = 0, ...effects] = solveUpper(lower, spread).map(
      (value, i) => value + (without[i] ?? 0) - span * (perSpan[i] ?? 0),
    );
    floors[draw] = floor;
    if (span > 0) halfLives.push(halfLife);
    for (const [i, effect] of effects.entries()) put(events[i], draw, effect);
    const decay = decayOf(halfLife);
    const fresh = Math.sqrt(1 - correlation ** 2) * sigma;
    let shift = 0;
    for (let session = 0; session < places.length; session++) {
      let level = floor + span * (decay[session] ?? 0);
      for (let i = 0; i < effects.length; i++) level += (effects[i] ?? 0) * (shapes[i]?.[session] ?? 0);
      put(levels[session], draw, level);
      if (session < past) {
        shift = lastMs - level;
      } else {
        shift = correlation * shift + fresh * nextNormal(source);
        put(medians[session - past], draw, level + shift);
      }
    }
  }
  return { floors, halfLives: Float64Array.from(halfLives), events, levels, medians };
}

function put(values: Float64Array | undefined, place: number, value: number): void {
  if (values !== undefined) values[place] = value;
}

/** 2^(−x/h) at all places, worked out once for each half-life. */
function decays(places: readonly number[]): (halfLife: number) => Float64Array {
  const made = new Map<number, Float64Array>();
  return (halfLife) => {
    const known = made.get(halfLife) ?? Float64Array.from(places, (place) => 2 ** (-place / halfLife));
    made.set(halfLife, known);
    return known;
  };
}

function cumulative(weights: readonly number[]): Float64Array {
  let sum = 0;
  return Float64Array.from(weights, (weight) => {
    sum += weight;
    return sum;
  });
}

/** The first place whose cumulative weight reaches the share. */
function find(upTo: Float64Array, share: number): number {
  let low = 0;
  let high = upTo.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((upTo[middle] ?? 1) < share) low = middle + 1;
    else high = middle;
  }
  return low;
}
