/**
 * Rearranges values[left..right] so that the value at `k` is the one that sorting would put there, with nothing
 * greater before it and nothing smaller after it; returns that value. Changes the array.
 *
 * Floyd & Rivest 1975, "Algorithm 489: SELECT": a sample of the range guesses bounds for the k-th value first.
 */
export function select(values: Float64Array, k: number, left = 0, right = values.length - 1): number {
  let low = left;
  let high = right;
  while (high > low) {
    if (high - low > 600) {
      const n = high - low + 1;
      const place = k - low + 1;
      const z = Math.log(n);
      const s = 0.5 * Math.exp((2 * z) / 3);
      const spread = 0.5 * Math.sqrt((z * s * (n - s)) / n) * Math.sign(place - n / 2);
      select(
        values,
        k,
        Math.max(low, Math.floor(k - (place * s) / n + spread)),
        Math.min(high, Math.floor(k + ((n - place) * s) / n + spread)),
      );
    }
    const pivot = values[k] as number;
    let i = low;
    let j = high;
    swap(values, low, k);
    if ((values[high] as number) > pivot) swap(values, low, high);
    while (i < j) {
      swap(values, i, j);
      i++;
      j--;
      while ((values[i] as number) < pivot) i++;
      while ((values[j] as number) > pivot) j--;
    }
    if (values[low] === pivot) swap(values, low, j);
    else swap(values, ++j, high);
    if (j <= k) low = j + 1;
    if (k <= j) high = j - 1;
  }
  return values[k] as number;
}

function swap(values: Float64Array, i: number, j: number): void {
  const kept = values[i] as number;
  values[i] = values[j] as number;
  values[j] = kept;
}
