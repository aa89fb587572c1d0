import type { LevelSeries } from "./levelSeries.ts";

/** How a trend carries a level on from each session to the next: by `reach` times the trend, of which `decay` is left. */
export interface Motion {
  readonly reach: Float64Array;
  readonly decay: Float64Array;
}

/** What is left of a trend after w sessions of practice. */
export function decayOf(phi: number, w: number): number {
  return phi === 1 ? 1 : phi ** w;
}

/** How far w sessions of practice carry a level, in units of the trend: φ(1 − φʷ)/(1 − φ). */
export function reachOf(phi: number, w: number): number {
  return phi === 1 ? w : (phi * (1 - phi ** w)) / (1 - phi);
}

/** The motion of a trend of which φ is left after one session. */
export function motionOf(phi: number, { w }: LevelSeries): Motion {
  return { reach: w.map((some) => reachOf(phi, some)), decay: w.map((some) => decayOf(phi, some)) };
}
