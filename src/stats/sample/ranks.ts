import type { Numbers } from "#numbers";

/**
 * Ranks from 1, equal values sharing the mean of their places.
 * @example ranks([30, 10, 30]) // [2.5, 1, 2.5]
 */
export function ranks(values: Numbers): Float64Array {
  const order = Array.from({ length: values.length }, (_, index) => index).sort(
    (a, b) => (values[a] as number) - (values[b] as number),
  );
  const result = new Float64Array(values.length);
  for (let start = 0; start < order.length; ) {
    let end = start + 1;
    while (end < order.length && values[order[end] as number] === values[order[start] as number]) end++;
    for (let i = start; i < end; i++) result[order[i] as number] = (start + end + 1) / 2;
    start = end;
  }
  return result;
}
