import { mustBeFinite } from "./finite.ts";

/** Samples of the sketch, evenly spaced over one turn of a corner. */
const SAMPLES = 600;

/** Bumps in the middle of the turn: where (0 is its beginning, 1 its end), how high against the rest, how wide. */
const bumps = [
  { at: 0.29, height: 0.22, width: 0.017 },
  { at: 0.38, height: 0.42, width: 0.02 },
  { at: 0.49, height: 0.58, width: 0.022 },
  { at: 0.57, height: 0.16, width: 0.014 },
  { at: 0.655, height: 0.47, width: 0.02 },
] as const;

/** What was seen of the force: its peak in percent of the limit, or the share of time at the limit as a fraction. */
export type ForceSeen = { readonly peak: number } | { readonly share: number };

/**
 * A sketch of the steering force over one turn, bumps in its middle, as it would be without a limit: a principle to be drawn,
 * no measurement. Only its size follows from what was seen: its highest sample is the peak, or that share of its samples
 * lies over the limit. Our own drawing, no source.
 * @param seen peak in percent of the limit above zero, or share of time at the limit, between 0 and 1
 * @returns force in percent of the limit, one sample after the other
 * @throws RangeError for a value that is not finite
 * @example Math.max(...forceSketch({ peak: 80 })) // 80
 */
export function forceSketch(seen: ForceSeen): readonly number[] {
  mustBeFinite({ ...seen });
  const shape = Array.from({ length: SAMPLES }, (_, index) => shapeAt(index / (SAMPLES - 1)));
  const full = "peak" in seen ? Math.max(...shape) * (100 / seen.peak) : levelOfShare(shape, seen.share);
  return shape.map((force) => (100 * force) / full);
}

/** The share of samples that lie over the limit, from 0 to 1. */
export function shareOverLimit(forces: readonly number[]): number {
  return forces.length === 0 ? 0 : forces.filter((force) => force > 100).length / forces.length;
}

/** A turn at unit size: into the corner, through it on a slow swell, out of it. */
function shapeAt(time: number): number {
  const steady = rampAt(time / 0.24) * rampAt((1 - time) / 0.28);
  const swell = 0.46 + 0.05 * Math.sin(7 * time) + 0.012 * Math.sin(61 * time);
  const bump = bumps.reduce(
    (sum, { at, height, width }) => sum + height * Math.exp(-(((time - at) / width) ** 2) / 2),
    0,
  );
  return steady * swell + 0.92 * bump;
}

/** From 0 to 1 without a corner at either end. */
function rampAt(way: number): number {
  const within = Math.min(1, Math.max(0, way));
  return within * within * (3 - 2 * within);
}

/** The size of force that this share of the samples exceeds; one of them at least. */
function levelOfShare(shape: readonly number[], share: number): number {
  const falling = shape.toSorted((a, b) => b - a);
  const over = Math.min(falling.length - 1, Math.max(1, Math.round(share * falling.length)));
  return ((falling[over - 1] ?? 1) + (falling[over] ?? 1)) / 2;
}
