/**
 * One piece of a way: its length in metres, and the square of the speed the grip allows on it (m²/s²; Infinity on
 * a straight, where grip bounds nothing).
 */
export interface Stretch {
  readonly length: number;
  readonly limit: number;
}

/** How the car moves: speed at the start (m/s), braking and drive (m/s²), and the straight's top speed if any. */
export interface Motion {
  readonly approachSpeed: number;
  readonly braking: number;
  readonly drive: number;
  readonly topSpeed?: number;
}

/**
 * Squared speed after `s` metres of accelerating by `a` from squared speed `start`. On an arc the grip left for it
 * shrinks with the friction circle, a·√(1 − (v²/v_lim²)²), which integrates to v² = v_lim²·sin(asin(v₀²/v_lim²) +
 * 2as/v_lim²), up to the limit.
 */
function squaredSpeed(start: number, a: number, s: number, limit: number): number {
  if (start >= limit) return limit;
  if (limit === Infinity) return start + 2 * a * s;
  return limit * Math.sin(Math.min(Math.PI / 2, Math.asin(start / limit) + (2 * a * s) / limit));
}

const steps = 240;

/**
 * Squared speeds allowed by braking at the start of each stretch, for what comes after it; one more at the very
 * end, where nothing bounds the speed.
 */
function backwardPass(way: readonly Stretch[], braking: number): number[] {
  const allowed = [Infinity];
  for (const { length, limit } of way.toReversed()) {
    const end = Math.min(allowed[0] ?? Infinity, limit);
    allowed.unshift(squaredSpeed(end, braking, length, limit));
  }
  return allowed;
}

/** Length of straight still missing before the way for braking from the approach speed to fit, in metres. */
export function missingApproach(way: readonly Stretch[], motion: Motion): number {
  const [allowed = Infinity] = backwardPass(way, motion.braking);
  return Math.max(0, (motion.approachSpeed ** 2 - allowed) / (2 * motion.braking));
}

/**
 * Time in seconds for a way made of straights and arcs: one pass forward with drive and one backward with braking,
 * the lower speed counts. Our methods, §9; speed limits after OpenStax, University Physics 1, §6.3. Each stretch is
 * walked in 240 steps of even acceleration (exact on a straight without a change from drive to braking).
 * @returns Infinity when the car cannot move at all
 */
export function cornerTime(way: readonly Stretch[], motion: Motion): number {
  const { braking, drive, topSpeed = Infinity } = motion;
  const cap = topSpeed ** 2;
  const allowed = backwardPass(way, braking);
  let speed = Math.min(motion.approachSpeed ** 2, allowed[0] ?? Infinity, cap);
  let seconds = 0;
  way.forEach(({ length, limit }, index) => {
    const start = Math.min(speed, limit);
    const end = Math.min(allowed[index + 1] ?? Infinity, limit);
    const at = (s: number) =>
      Math.min(squaredSpeed(start, drive, s, limit), squaredSpeed(end, braking, length - s, limit), cap);
    for (let step = 1, before = Math.sqrt(start); step <= steps && length > 0; step++) {
      const after = Math.sqrt(at((length * step) / steps));
      seconds += (2 * length) / steps / (before + after);
      before = after;
    }
    speed = at(length);
  });
  return seconds;
}
