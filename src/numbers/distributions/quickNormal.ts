/**
 * Share of the standard normal distribution below z, to 1e-14: for sums over thousands of terms, where `normalCdf` is too
 * slow. Small tails keep fewer digits.
 *
 * Hart 1968, "Computer Approximations", algorithm 5666, as given by West 2005, "Better approximations to cumulative
 * normal functions" (coefficients from memory; held against `normalCdf` by a test).
 */
export function quickNormalCdf(z: number): number {
  const x = Math.abs(z);
  if (x > 37) return z > 0 ? 1 : 0;
  const tail = upperTail(x, Math.exp((-x * x) / 2));
  return z > 0 ? 1 - tail : tail;
}

function upperTail(x: number, power: number): number {
  if (x < 7.07106781186547) {
    const top =
      (((((3.52624965998911e-2 * x + 0.700383064443688) * x + 6.37396220353165) * x + 33.912866078383) * x +
        112.079291497871) *
        x +
        221.213596169931) *
        x +
      220.206867912376;
    const bottom =
      ((((((8.83883476483184e-2 * x + 1.75566716318264) * x + 16.064177579207) * x + 86.7807322029461) * x +
        296.564248779674) *
        x +
        637.333633378831) *
        x +
        793.826512519948) *
        x +
      440.413735824752;
    return (power * top) / bottom;
  }
  const fraction = x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
  return power / fraction / 2.506628274631;
}
