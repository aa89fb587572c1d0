/**
 * Whole numbers near the given ones that add up to a whole: what the lower neighbours leave goes, one each, to those cut
 * most. Unlike shares of a total, the parts may be below zero.
 * @param total a whole number, within a few of what the parts add up to
 * @returns none where there are no parts
 * @example wholeParts(5, [2.5, 1.75, 0.25]) // [3, 2, 0]
 */
export function wholeParts(total: number, parts: readonly number[]): number[] {
  const whole = parts.map(Math.floor);
  const order = parts
    .map((part, index) => ({ index, cut: part - Math.floor(part) }))
    .sort((a, b) => b.cut - a.cut || a.index - b.index);
  let left = total - whole.reduce((sum, part) => sum + part, 0);
  while (left !== 0 && order.length > 0) {
    const step = Math.sign(left);
    for (const { index } of step > 0 ? order : order.toReversed()) {
      if (left === 0) break;
      whole[index] = (whole[index] as number) + step;
      left -= step;
    }
  }
  return whole;
}
