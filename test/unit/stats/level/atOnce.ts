/**
 * One cell of the level model worked out another way than by a filter: all that is drawn (the first session's error, the
 * trend, noise, steps, breaks, errors) is one list of independent normal numbers, levels and medians are sums of them, and
 * the medians are taken as known all at once, by solving one system of equations. Written from the definition of the model.
 */
export interface Cell {
  readonly variance: number;
  /** Of the level's own noise a session of practice, in units of the variance. */
  readonly noise: number;
  readonly phi: number;
  readonly trend: readonly [mean: number, deviation: number];
  /** Sessions (from, below to) before which the level moves; the trend begins at `from`. */
  readonly moves: readonly [from: number, to: number];
}

/** Practice and events before each session: of the first nothing but breaks counts. */
export interface Place {
  readonly y: number;
  readonly w: number;
  readonly steps: number;
  /** Breaks just before the session, and its laps up to the middle; laps since the middle of the one before. */
  readonly breaks: number;
  readonly half: number;
  readonly apart: number;
}

type Sum = Map<number, number>;

const plus = (a: Sum, b: Sum, times = 1): Sum => {
  const sum = new Map(a);
  for (const [key, factor] of b) sum.set(key, (sum.get(key) ?? 0) + times * factor);
  return sum;
};

export function atOnce(places: readonly Place[], cell: Cell) {
  const means: number[] = [];
  const variances: number[] = [];
  const drawn = (mean: number, variance: number): Sum => {
    means.push(mean);
    variances.push(variance);
    return new Map([[means.length - 1, 1]]);
  };
  const times = (sum: Sum, factor: number): Sum => plus(new Map(), sum, factor);
  const half = (laps: number) => 2 ** (-laps / 20);
  const { variance, noise, phi, trend, moves } = cell;
  const still: Sum = new Map();

  let level: Sum = new Map();
  let slope = moves[0] === 0 && moves[1] > 0 ? drawn(trend[0], trend[1] ** 2) : still;
  let loss: Sum = new Map();
  const levels: Sum[] = [];
  const seen: Sum[] = [];
  let step: Sum | undefined;
  places.forEach(({ y, w, steps, breaks, half: lapsIn, apart }, i) => {
    const onset = drawn(0.005 * breaks * half(lapsIn), variance * 1.25 ** 2 * breaks * half(lapsIn) ** 2);
    if (i === 0) {
      loss = onset;
      level = plus(drawn(y, variance), loss, -1);
    } else {
      if (i === moves[0]) slope = drawn(trend[0], trend[1] ** 2);
      if (i === moves[1]) slope = still;
      if (i >= moves[0] && i < moves[1]) {
        // One session after the other, of which φ of the trend is left each; whole ones here, and parts by the formula.
        const reach = phi === 1 ? w : (phi * (1 - phi ** w)) / (1 - phi);
        level = plus(level, slope, reach);
        slope = times(slope, phi ** w);
      }
      const jump = drawn(0, 16 * variance * steps);
      if (steps > 0) step ??= jump;
      level = plus(plus(level, drawn(0, noise * variance * w)), jump);
      loss = plus(times(loss, half(apart)), onset);
      seen.push(plus(plus(level, loss), drawn(0, variance)));
    }
    levels.push(level);
  });

  const mean = (sum: Sum) => [...sum].reduce((all, [key, factor]) => all + factor * (means[key] ?? 0), 0);
  const covariance = (a: Sum, b: Sum) =>
    [...a].reduce((all, [key, factor]) => all + factor * (b.get(key) ?? 0) * (variances[key] ?? 0), 0);
  const known = seen.map((a) => seen.map((b) => covariance(a, b)));
  const off = seen.map((sum, i) => (places[i + 1]?.y ?? 0) - mean(sum));
  const { inverse, logDeterminant } = invert(known);
  const solution = inverse.map((row) => dot(row, off));
  const withSeen = (sum: Sum) => seen.map((one) => covariance(sum, one));
  const given = (a: Sum, b: Sum) => {
    const of = withSeen(b);
    const solved = inverse.map((row) => dot(row, of));
    return covariance(a, b) - dot(withSeen(a), solved);
  };
  const meanGiven = (sum: Sum) => mean(sum) + dot(withSeen(sum), solution);
  return {
    levels,
    slope,
    loss,
    step,
    meanGiven,
    given,
    /** Up to a constant that hangs on the number of sessions alone. */
    logEvidence: -(dot(off, solution) + logDeterminant) / 2,
  };
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
}

/** Gauss–Jordan, without exchanging rows: covariances with an error in each are well behaved. */
function invert(matrix: readonly (readonly number[])[]) {
  const size = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  let logDeterminant = 0;
  rows.forEach((row, i) => {
    const pivot = row[i] ?? 0;
    logDeterminant += Math.log(pivot);
    row.forEach((value, j) => {
      row[j] = value / pivot;
    });
    rows.forEach((other, k) => {
      if (k === i) return;
      const factor = other[i] ?? 0;
      other.forEach((value, j) => {
        other[j] = value - factor * (row[j] ?? 0);
      });
    });
  });
  return { inverse: rows.map((row) => row.slice(size)), logDeterminant };
}
