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
 * the lower speed counts. Our methods, §9; speed limits after OpenStax, University Physics 1, §6.3. Straights are exact;
 * an arc on which the speed changes is walked in 240 steps of even acceleration.
 * @returns Infinity when the car cannot move at all
 */
export function cornerTime(way: readonly Stretch[], motion: Motion): number {
  const cap = (motion.topSpeed ?? Infinity) ** 2;
  const allowed = backwardPass(way, motion.braking);
  let speed = Math.min(motion.approachSpeed ** 2, allowed[0] ?? Infinity, cap);
  let seconds = 0;
  way.forEach(({ length, limit }, index) => {
    const start = Math.min(speed, limit);
    const end = Math.min(allowed[index + 1] ?? Infinity, limit);
    if (length <= 0) {
      speed = Math.min(start, end, cap);
      return;
    }
    seconds +=
      limit === Infinity
        ? straightTime(length, { start, end, cap }, motion)
        : arcTime(length, { start, end, cap, limit }, motion);
    const driven = squaredSpeed(start, motion.drive, length, limit);
    speed = Math.min(driven, end, cap);
  });
  return seconds;
}

/** Squared speeds (m²/s²) a stretch begins with, must be down to at its end, and may reach. */
interface Bounds {
  readonly start: number;
  readonly end: number;
  readonly cap: number;
}

/** Driving on to the highest speed that fits, holding the top speed, braking down to what the end allows. */
function straightTime(length: number, { start, end, cap }: Bounds, { drive, braking }: Motion): number {
  const until = Math.min(length, (end - start + 2 * braking * length) / (2 * (drive + braking)));
  const peak = Math.min(cap, start + 2 * drive * until);
  const last = Math.min(end, peak);
  const driving = Math.min(until, (peak - start) / (2 * drive));
  const slowing = peak > last ? (peak - last) / (2 * braking) : 0;
  const [first, top, after] = [start, peak, last].map(Math.sqrt) as [number, number, number];
  const even = (metres: number, sum: number) => (metres > 0 ? (2 * metres) / sum : 0);
  return even(driving, first + top) + even(length - driving - slowing, 2 * top) + even(slowing, top + after);
}

function arcTime(
  length: number,
  { start, end, cap, limit }: Bounds & { readonly limit: number },
  { drive, braking }: Motion,
): number {
  const held = Math.min(limit, cap);
  if (start >= held && end >= held) return length / Math.sqrt(held);
  const [from, to] = [Math.asin(start / limit), Math.asin(end / limit)];
  const [driving, slowing] = [(2 * drive) / limit, (2 * braking) / limit];
  const turn = Math.PI / 2;
  let seconds = 0;
  let before = Math.sqrt(Math.min(start, cap));
  for (let step = 1; step <= steps; step++) {
    const s = (length * step) / steps;
    const angle = Math.min(turn, from + driving * s, to + slowing * (length - s));
    const after = Math.sqrt(Math.min(cap, limit * Math.sin(angle)));
    seconds += (2 * length) / steps / (before + after);
    before = after;
  }
  return seconds;
}
