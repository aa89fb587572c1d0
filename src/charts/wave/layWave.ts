/** A turn as it is drawn: paths in px, and where the limit stands. */
export interface LaidWave {
  readonly height: number;
  /** The force that comes through. */
  readonly felt: string;
  /** The force as it would be over the limit; empty where nothing lies over it. */
  readonly lost: string;
  /** Where the force stands flat at the limit; empty where it never does. */
  readonly flat: string;
  readonly limit: number;
  readonly ground: number;
}

/** Height of the picture against its width, and the room above the highest force and under the line of no force, px. */
const SHAPE = 0.9;
const ABOVE = 6;
const BELOW = 4;

/**
 * Lays a turn out in a box: what comes through as one line, flat at the limit, and what lies over the limit as lines of its
 * own.
 * @param forces in percent of the limit, evenly spaced; highest of all pictures that are compared, so that they share a scale
 */
export function layWave(forces: readonly number[], width: number, highest: number): LaidWave {
  const height = Math.round(Math.min(width * SHAPE, 210));
  const ground = height - BELOW;
  const y = (force: number) => rounded(ground - ((ground - ABOVE) * force) / Math.max(highest, 100));
  const x = (index: number) => rounded((index * width) / Math.max(1, forces.length - 1));
  const at = (force: number, index: number) => `${x(index)} ${y(force)}`;
  const felt = forces.map((force, index) => at(Math.min(force, 100), index));
  const spans = spansOver(forces);
  const flat = spans.map((span) => `M${x(span[0] ?? 0)} ${y(100)}H${x(span.at(-1) ?? 0)}`).join("");
  const lost = spans.map(
    (span) => `M${span.map((index) => at(Math.max(100, forces[index] ?? 0), index)).join("L")}Z`,
  );
  return { height, felt: `M${felt.join("L")}`, lost: lost.join(""), flat, limit: y(100), ground };
}

/** Runs of samples over the limit, each with the sample before and after it, at which its line meets the limit. */
function spansOver(forces: readonly number[]): readonly (readonly number[])[] {
  const spans: number[][] = [];
  forces.forEach((force, index) => {
    if (force <= 100) return;
    const last = spans.at(-1);
    if (last !== undefined && (forces[index - 1] ?? 0) > 100) last.push(index);
    else spans.push([Math.max(0, index - 1), index]);
  });
  return spans.map((span) => [...span, Math.min(forces.length - 1, (span.at(-1) ?? 0) + 1)]);
}

function rounded(px: number): number {
  return Math.round(px * 10) / 10;
}
