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
  /** The curve itself at each past session, without the session's own shift. */
  readonly past: readonly Float64Array[];
  /** Medians of each session to come. */
  readonly future: readonly Float64Array[];
}

/** Draws used wherever nothing else is said. */
export const usualDraws = 2000;

/**
 * Draws from the posterior of the practice curve and carries each on through the sessions to come, the shift of a
 * session going on from that of the last one: e′ = ρ·e + √(1 − ρ²)·σ·N(0, 1). Our methods, §5.
 *
 * Random numbers belong to (seed, draw, session), so a session added at the end changes none of those before it.
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
  const places = history.map(placeOf);
  const ahead = futurePlaces(history, future);
  const columnsAt = [
    ...places.map((place, session) => columns.map((column) => column.at(session, place))),
    ...ahead.map((place, k) => columns.map((column) => column.at(places.length + k, place))),
  ];
  const empty = () => new Float64Array(draws);
  const floors = empty();
  const halfLives: number[] = [];
  const sizes = columns.map(empty);
  const past = places.map(empty);
  const medians = ahead.map(empty);
  const last = places.length - 1;
  const lastMs = history[last]?.medianMs ?? 0;

  for (let draw = 0; draw < draws; draw++) {
    const source = stream(seed, draw);
    const cell = cells[find(upTo, nextUniform(source))];
    if (cell === undefined) throw new RangeError("the practice curve has no cell to draw from");
    const { span, halfLife, correlation, coefficients, lower } = cell;
    const sigma = Math.sqrt(cell.sumOfSquares / nextChiSquared(source, degreesOfFreedom));
    const shifts = solveUpper(
      lower,
      coefficients.map(() => nextNormal(source)),
    );
    const [floor = 0, ...effects] = coefficients.map((value, i) => value + sigma * (shifts[i] ?? 0));
    const curve = (place: number, session: number) => {
      let value = floor + span * 2 ** (-place / halfLife);
      for (let i = 0; i < effects.length; i++) value += (effects[i] ?? 0) * (columnsAt[session]?.[i] ?? 0);
      return value;
    };
    floors[draw] = floor;
    if (span > 0) halfLives.push(halfLife);
    sizes.forEach((size, i) => {
      size[draw] = effects[i] ?? 0;
    });
    past.forEach((values, session) => {
      values[draw] = curve(places[session] ?? 0, session);
    });
    const fresh = Math.sqrt(1 - correlation ** 2) * sigma;
    let shift = lastMs - curve(places[last] ?? 0, last);
    medians.forEach((values, k) => {
      shift = correlation * shift + fresh * nextNormal(stream(seed, draw, k + 1));
      values[draw] = curve(ahead[k] ?? 0, places.length + k) + shift;
    });
  }
  return { floors, halfLives: Float64Array.from(halfLives), events: sizes, past, future: medians };
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
