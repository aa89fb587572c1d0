/** What a rank test says about a shift. */
export interface RankTest {
  /** Hodges–Lehmann estimate of the shift. */
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** Confidence the interval really has: with few values not every one can be reached. */
  readonly achievedConfidence: number;
  /** Two-sided. */
  readonly p: number;
  readonly statistic: number;
  readonly exact: boolean;
}

/** What a t test says about a mean difference. */
export interface TTest {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** Two-sided. */
  readonly p: number;
  readonly t: number;
  readonly degreesOfFreedom: number;
}
