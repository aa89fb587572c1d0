/**
 * Quantile of the standard normal distribution, for p above ½, by bisection on its upper tail.
 * The tail is taken from its continued fraction (Abramowitz & Stegun 26.2.14), which is exact to machine
 * precision from z = 1 up; the gain formulas only ask there.
 */
export function upperNormalQuantile(tail: number): number {
  let low = 1;
  let high = 40;
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2;
    if (upperTail(middle) > tail) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function upperTail(z: number): number {
  let fraction = z;
  for (let term = 400; term >= 1; term--) fraction = z + term / fraction;
  return Math.exp((-z * z) / 2) / (Math.sqrt(2 * Math.PI) * fraction);
}
