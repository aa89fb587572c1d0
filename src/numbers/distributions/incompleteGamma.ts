import { logGamma } from "./logGamma.ts";

const PRECISION = 1e-16;
const TINY = 1e-300;

/** The lower and the upper share of the gamma function's integral; they add up to 1. */
export interface Shares {
  readonly lower: number;
  readonly upper: number;
}

/**
 * Regularised incomplete gamma functions P(a, x) and Q(a, x) for a > 0, x ≥ 0: the series below a + 1, the continued
 * fraction above (Abramowitz & Stegun 6.5.29 and 6.5.31, the fraction by Lentz's method). The smaller of the two is
 * the one computed, so that neither tail loses digits.
 */
export function incompleteGamma(a: number, x: number): Shares {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (x === Number.POSITIVE_INFINITY) return { lower: 1, upper: 0 };
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    const lower = front * series(a, x);
    return { lower, upper: 1 - lower };
  }
  const upper = front * fraction(a, x);
  return { lower: 1 - upper, upper };
}

function series(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = a + 1; term > sum * PRECISION; n++) {
    term *= x / n;
    sum += term;
  }
  return sum;
}

function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1 / TINY;
  let d = 1 / b;
  let result = d;
  for (let i = 1; i < 10_000; i++) {
    const step = -i * (i - a);
    b += 2;
    d = 1 / notZero(step * d + b);
    c = notZero(b + step / c);
    result *= d * c;
    if (Math.abs(d * c - 1) < 2 * PRECISION) break;
  }
  return result;
}

function notZero(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}
