/** A difference with its 90 % interval; ms unless said otherwise, faster is negative. */
export interface Shift {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
}

/** Whether the interval leaves out zero. */
export function isClearShift({ low, high }: Pick<Shift, "low" | "high">): boolean {
  return low > 0 || high < 0;
}
