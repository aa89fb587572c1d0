/**
 * Shares out a whole number in proportion to weights, in whole numbers that add up to it: everybody gets their share
 * rounded down, the rest goes one each to the largest remainders (Hamilton's method), the first of equals first.
 * @param total whole number, 0 or more
 * @param weights 0 or more each, not all 0
 * @example largestRemainder(10, [1, 1, 1]) // [4, 3, 3]
 */
export function largestRemainder(total: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const exact = weights.map((weight) => (total * weight) / sum);
  const shares = exact.map(Math.floor);
  const left = total - shares.reduce((all, share) => all + share, 0);
  const order = exact
    .map((value, i) => ({ i, remainder: value - Math.floor(value) }))
    .sort((a, b) => b.remainder - a.remainder || a.i - b.i);
  for (const { i } of order.slice(0, left)) shares[i] = (shares[i] ?? 0) + 1;
  return shares;
}
