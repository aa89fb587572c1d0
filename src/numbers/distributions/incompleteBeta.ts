import { logGamma } from "./logGamma.ts";

const PRECISION = 2e-16;
const TINY = 1e-300;

/**
 * Regularised incomplete beta function I_x(a, b) for a, b > 0 and 0 ≤ x ≤ 1, by the continued fraction of
 * Abramowitz & Stegun 26.5.8 (Lentz's method), on the side where it converges fast.
 * @param y 1 − x, handed in so that an x next to 1 keeps its digits
 */
export function incompleteBeta(a: number, b: number, x: number, y = 1 - x): number {
  if (x <= 0) return 0;
  if (y <= 0) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(y));
  return x < (a + 1) / (a + b + 2) ? (front * fraction(a, b, x)) / a : 1 - (front * fraction(b, a, y)) / b;
}

function fraction(a: number, b: number, x: number): number {
  let c = 1;
  let d = 1 / notZero(1 - ((a + b) * x) / (a + 1));
  let result = d;
  for (let m = 1; m < 10_000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / notZero(1 + even * d);
    c = notZero(1 + even / c);
    result *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / notZero(1 + odd * d);
    c = notZero(1 + odd / c);
    result *= d * c;
    if (Math.abs(d * c - 1) < PRECISION) break;
  }
  return result;
}

function notZero(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}
