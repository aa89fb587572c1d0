/** A label that wants to stand at a height, and how high it is. */
export interface EndLabel {
  readonly y: number;
  readonly height: number;
}

/**
 * Moves labels apart so that none overlaps and none leaves the space between top and bottom, with the least squared
 * movement (pooling of adjacent violators). Where there is no room for all, the lowest run over the bottom.
 * @param labels wanted middles and heights, px
 * @returns the middles, in the order given
 */
export function spreadLabels(labels: readonly EndLabel[], top: number, bottom: number): readonly number[] {
  const order = labels.map((label, index) => ({ ...label, index })).sort((a, b) => a.y - b.y);
  let stacked = 0;
  const offsets = order.map((label) => {
    stacked += label.height;
    return stacked - label.height / 2;
  });
  const places = poolViolators(order.map((label, at) => label.y - (offsets[at] ?? 0)));
  const lowest = Math.max(top, bottom - stacked);
  const result = new Array<number>(labels.length).fill(0);
  order.forEach((label, at) => {
    const place = Math.min(lowest, Math.max(top, places[at] ?? 0));
    result[label.index] = place + (offsets[at] ?? 0);
  });
  return result;
}

/** The nearest list that never falls, by least squares. */
function poolViolators(wanted: readonly number[]): number[] {
  const pools: { sum: number; count: number }[] = [];
  for (const value of wanted) {
    let pool = { sum: value, count: 1 };
    for (
      let last = pools.at(-1);
      last && last.sum / last.count > pool.sum / pool.count;
      last = pools.at(-1)
    ) {
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
      pools.pop();
    }
    pools.push(pool);
  }
  return pools.flatMap((pool) => new Array<number>(pool.count).fill(pool.sum / pool.count));
}
