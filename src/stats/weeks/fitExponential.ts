import { type Figure, known, unknown } from "#domain";
import { type Numbers, requireFinite, requireSameLength } from "#numbers";
import { leastAlong } from "./leastAlong.ts";
import { polish } from "./polish.ts";

/** The least-squares curve a + b·2^(−x/h), in the units of x and y. */
export interface ExponentialFit {
  /** a: where the curve ends up (a ceiling when the span is below 0). */
  readonly floor: number;
  /** b: the gap at x = 0. */
  readonly span: number;
  /** h: the way along x that halves the gap. */
  readonly halfLife: number;
  /** √(residual sum of squares/(n − 3)). */
  readonly residualSD: number;
}

const least = 4;
/** Half-lives tried, as multiples of the range of x: outside, the data show a line or a step, no curve. */
const shortest = 1 / 50;
const longest = 30;

/**
 * Least-squares fit of y = a + b·2^(−x/h), all three free: a search along h with the best a and b at each (variable
 * projection, Golub & Pereyra 1973), then Gauss–Newton steps. Stands beside the practice curve for comparison with
 * published fits.
 * @returns the fit, or a reason with fewer than 4 different places, or where the points show no curve
 * @throws RangeError for a value that is not finite, or for columns of different length
 */
export function fitExponential(x: Numbers, y: Numbers): Figure<ExponentialFit> {
  requireSameLength(x, y);
  requireFinite(x, "x");
  requireFinite(y, "y");
  const places = new Set(Array.from(x));
  if (places.size < least) return unknown({ needs: least, of: "different place", has: places.size });
  const from = Math.min(...places);
  const range = Math.max(...places) - from;
  const values = Array.from(y);
  if (values.every((value) => value === values[0])) return unknown({ because: "all values equal" });

  // Counted from the first place, so that no power underflows.
  const along = Array.from(x, (place) => place - from);
  const lineThrough = (halfLife: number) =>
    bestLine(
      along.map((place) => 2 ** (-place / halfLife)),
      values,
    );
  const lowest = leastAlong(
    (log) => lineThrough(2 ** log).squares,
    Math.log2(shortest * range),
    Math.log2(longest * range),
    120,
  );
  if (lowest.isAtEnd) return unknown({ because: "along a line or a step" });
  const halfLife = 2 ** lowest.at;
  const start = lineThrough(halfLife);
  const curve = ([a = 0, b = 0, rate = 0]: readonly number[]) =>
    along.map((place) => {
      const decay = Math.exp(-rate * place);
      return { value: a + b * decay, slopes: [1, decay, -b * place * decay] };
    });
  const fit = polish(curve, values, [start.intercept, start.slope, Math.LN2 / halfLife]);
  const [floor = 0, gap = 0, rate = 0] = fit.parameters;
  const h = Math.LN2 / rate;
  const residualSD = Math.sqrt(fit.squares / (values.length - 3));
  return known({ floor, span: gap * 2 ** (from / h), halfLife: h, residualSD });
}

/** The straight line of y over u with the least squares. */
function bestLine(u: readonly number[], y: readonly number[]) {
  const n = u.length;
  const meanU = u.reduce((sum, value) => sum + value, 0) / n;
  const meanY = y.reduce((sum, value) => sum + value, 0) / n;
  let uu = 0;
  let uy = 0;
  u.forEach((value, i) => {
    uu += (value - meanU) ** 2;
    uy += (value - meanU) * ((y[i] ?? 0) - meanY);
  });
  const slope = uu > 0 ? uy / uu : 0;
  const intercept = meanY - slope * meanU;
  const squares = u.reduce((sum, value, i) => sum + ((y[i] ?? 0) - intercept - slope * value) ** 2, 0);
  return { intercept, slope, squares };
}
