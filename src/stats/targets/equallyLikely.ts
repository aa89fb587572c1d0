/**
 * So many equally likely numbers of sessions after which a target is reached, the soonest first: the middles of as many
 * equal shares of the futures, so that rounding a chance to twentieths counts just those that have come by then.
 * @param first for each draw the number (from 1) of the session that reaches it, Infinity where none does
 * @param count how many are wanted, not more than there are draws
 * @returns undefined for each that is not reached
 */
export function equallyLikely(first: Float64Array, count: number): readonly (number | undefined)[] {
  const sorted = first.toSorted();
  return Array.from({ length: count }, (_, index) => {
    const session = sorted[Math.ceil(((index + 0.5) / count) * sorted.length) - 1] ?? Infinity;
    return session === Infinity ? undefined : session;
  });
}
