/** Runs of so many laps, and the share of them in which chance alone points at a lap. */
const simulated = [
  [5, 0.16],
  [8, 0.15],
  [12, 0.18],
  [20, 0.31],
  [30, 0.46],
  [45, 0.64],
  [60, 0.76],
  [80, 0.86],
  [100, 0.92],
  [150, 0.98],
  [200, 0.995],
] as const;

/**
 * How often `pointedAtLaps` finds a lap where every lap is like the others: simulated with skewed lap noise (a gamma
 * distribution of skewness 1.4), 20,000 runs of each length, and a straight line between the lengths.
 * @param laps five or more
 * @returns a fraction; the last one for longer runs
 * @example chanceOfPointing(20) // 0.31
 */
export function chanceOfPointing(laps: number): number {
  const next = simulated.findIndex(([length]) => length >= laps);
  const [longer, more] = simulated.at(next) ?? simulated[0];
  const [shorter, fewer] = next > 0 ? (simulated[next - 1] ?? simulated[0]) : [longer, more];
  return longer === shorter ? more : fewer + ((more - fewer) * (laps - shorter)) / (longer - shorter);
}
