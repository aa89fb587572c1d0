import { type Figure, known, unknown } from "#domain";
import { type Numbers, requireFinite, requireSameLength } from "#numbers";
import { leastAlong } from "./leastAlong.ts";
import { polish } from "./polish.ts";

/** The least-squares curve b₁·x^b₂, in the units of x and y. */
export interface PowerFit {
  /** b₁: the value at x = 1. */
  readonly scale: number;
  /** b₂. */
  readonly exponent: number;
  /** √(residual sum of squares/(n − 2)). */
  readonly residualSD: number;
}

const least = 3;
const steepest = 12;

/**
 * Least-squares fit of y = b₁·x^b₂, in y itself, not in logarithms: a search along b₂ with the best b₁ at each, then
 * Gauss–Newton steps. A power law describes many practice data (Newell & Rosenbloom 1981); it stands beside the
 * practice curve for comparison with published fits.
 * @param x above 0
 * @returns the fit, or a reason with fewer than 3 different places, with an x of 0 or less, or where the points show
 * no curve
 * @throws RangeError for a value that is not finite, or for columns of different length
 */
export function fitPower(x: Numbers, y: Numbers): Figure<PowerFit> {
  requireSameLength(x, y);
  requireFinite(x, "x");
  requireFinite(y, "y");
  const places = Array.from(x);
  const values = Array.from(y);
  const different = new Set(places).size;
  if (different < least) return unknown({ needs: least, of: "different place", has: different });
  const smallest = Math.min(...places);
  if (smallest <= 0) return unknown({ because: "place not above zero", smallest });
  if (values.every((value) => value === values[0])) return unknown({ because: "all values equal" });

  // Counted in units of the middle of x, so that scale and exponent hardly pull at each other.
  const logs = places.map(Math.log);
  const middle = logs.reduce((sum, log) => sum + log, 0) / logs.length;
  const centred = logs.map((log) => log - middle);
  const scaleFor = (exponent: number) => {
    const powers = centred.map((log) => Math.exp(exponent * log));
    const top = powers.reduce((sum, power, i) => sum + power * (values[i] ?? 0), 0);
    return top / powers.reduce((sum, power) => sum + power * power, 0);
  };
  const squaresFor = (exponent: number) => {
    const scale = scaleFor(exponent);
    return centred.reduce(
      (sum, log, i) => sum + ((values[i] ?? 0) - scale * Math.exp(exponent * log)) ** 2,
      0,
    );
  };
  const lowest = leastAlong(squaresFor, -steepest, steepest, 241);
  if (lowest.isAtEnd) return unknown({ because: "along a step" });
  const curve = ([b = 0, exponent = 0]: readonly number[]) =>
    centred.map((log) => {
      const power = Math.exp(exponent * log);
      return { value: b * power, slopes: [power, b * power * log] };
    });
  const fit = polish(curve, values, [scaleFor(lowest.at), lowest.at]);
  const [b = 0, exponent = 0] = fit.parameters;
  const residualSD = Math.sqrt(fit.squares / (values.length - 2));
  return known({ scale: b * Math.exp(-exponent * middle), exponent, residualSD });
}
