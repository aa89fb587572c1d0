/**
 * The place on [0, ∞) where a falling function reaches a wanted value: Newton's steps on the logarithm, kept inside
 * a bracket that a bisection halves whenever a step would leave it.
 * @param tail falling from 1 towards 0
 * @param density minus the slope of `tail`
 * @param wanted value to reach, above 0 and below 1
 * @param start first guess, above 0
 */
export function invertTail(
  tail: (x: number) => number,
  density: (x: number) => number,
  wanted: number,
  start: number,
): number {
  let low = 0;
  let high = Math.max(start, 1e-300);
  while (tail(high) > wanted) {
    low = high;
    high *= 2;
  }
  let x = high > start ? (low + high) / 2 : start;
  for (let i = 0; i < 200; i++) {
    const value = tail(x);
    if (value > wanted) low = x;
    else high = x;
    const step = (value - wanted) / density(x);
    let next = x + step;
    if (!(next > low && next < high)) next = (low + high) / 2;
    if (Math.abs(next - x) <= 1e-15 * x || next === low || next === high) return next;
    x = next;
  }
  return x;
}
