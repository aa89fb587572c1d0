/** Numbers of sessions after which 10, 50 and 90 % of the futures have reached a target; undefined where not. */
export interface ExpectedSession {
  readonly low: number | undefined;
  readonly mid: number | undefined;
  readonly high: number | undefined;
}

/**
 * When a target is likely to be reached: the first session at which half of the draws have reached it, with the
 * 10–90 % range. Our methods, §6.
 * @param first for each draw the number (from 1) of the session that reaches it, Infinity where none does
 */
export function expectedSession(first: Float64Array): ExpectedSession {
  const sorted = first.toSorted();
  const at = (share: number) => {
    const session = sorted[Math.ceil(share * sorted.length) - 1] ?? Infinity;
    return session === Infinity ? undefined : session;
  };
  return { low: at(0.1), mid: at(0.5), high: at(0.9) };
}
