import { type Figure, known, leastForSpread, unknown } from "#domain";
import { mean, requireFinite } from "#numbers";

const LEAST_SESSIONS = 6;
const LEAST_RUNS = 2;

/** Where the spread of pace laps comes from: variances, ms². */
export interface SpreadSources {
  /** From evening to evening, from run to run of one evening, from lap to lap of one run. */
  readonly evenings: number;
  readonly runs: number;
  readonly laps: number;
  /** Sessions behind it. */
  readonly sessions: number;
}

/**
 * Where the spread comes from: the variance of pace laps split between evenings, runs and laps, by the analysis of variance of
 * a nested design with unequal numbers (Searle, Casella & McCulloch 1992, "Variance Components"; title from memory); what
 * comes out below zero is nothing. Our methods, §5.
 * @param sessions runs of a session, each its pace laps in ms, with the movement of the level already taken out
 * @returns a reason with fewer than six sessions that have two runs of five pace laps; runs and sessions with fewer are left out
 * @throws RangeError for a time that is not finite
 */
export function spreadSources(sessions: readonly (readonly (readonly number[])[])[]): Figure<SpreadSources> {
  const tree = sessions
    .map((runs) => runs.filter((laps) => laps.length >= leastForSpread))
    .filter((runs) => runs.length >= LEAST_RUNS);
  if (tree.length < LEAST_SESSIONS)
    return unknown({
      needs: LEAST_SESSIONS,
      of: "session",
      each: { needs: LEAST_RUNS, of: "pace run" },
      has: tree.length,
    });
  for (const laps of tree.flat()) requireFinite(laps, "sessions");
  const { evenings, runs, laps } = varianceComponents(tree);
  return known({
    evenings: Math.max(0, evenings),
    runs: Math.max(0, runs),
    laps,
    sessions: tree.length,
  });
}

/**
 * The components of a tree of groups, branches and leaves, without a bias, so that one may come out below zero: two groups at
 * least, one of them with two branches, one branch with two leaves.
 */
export function varianceComponents(
  tree: readonly (readonly (readonly number[])[])[],
): Pick<SpreadSources, "evenings" | "runs" | "laps"> {
  const groups = tree.map((branches) => branches.map(sumsOf));
  const all = joined(groups.map(joined));
  const branches = groups.flat();
  const between = sum(groups.map((group) => squaresBetween(group)));
  const withinSquares = sum(branches.map(({ squares }) => squares));
  const [a, b, n] = [groups.length, branches.length, all.n];
  const own = sum(groups.map((group) => sum(group.map((one) => one.n ** 2)) / joined(group).n));
  const laps = withinSquares / (n - b);
  const runs = (between / (b - a) - laps) / ((n - own) / (b - a));
  const ofRuns = (own - sum(branches.map((one) => one.n ** 2)) / n) / (a - 1);
  const ofGroups = (n - sum(groups.map((group) => joined(group).n ** 2)) / n) / (a - 1);
  const evenings = (squaresBetween(groups.map(joined)) / (a - 1) - laps - ofRuns * runs) / ofGroups;
  return { evenings, runs, laps };
}

/** How many, their mean, and the squares of their distances from it. */
interface Sums {
  readonly n: number;
  readonly mean: number;
  readonly squares: number;
}

function sumsOf(values: readonly number[]): Sums {
  const middle = mean(values) ?? 0;
  return { n: values.length, mean: middle, squares: sum(values.map((value) => (value - middle) ** 2)) };
}

function joined(parts: readonly Sums[]): Sums {
  const n = sum(parts.map((part) => part.n));
  const middle = sum(parts.map((part) => part.n * part.mean)) / n;
  return { n, mean: middle, squares: sum(parts.map(({ squares }) => squares)) + squaresBetween(parts) };
}

/** Squares of the parts' means about their common one, each as often as it has values. */
function squaresBetween(parts: readonly Sums[]): number {
  const n = sum(parts.map((part) => part.n));
  const middle = sum(parts.map((part) => part.n * part.mean)) / n;
  return sum(parts.map((part) => part.n * (part.mean - middle) ** 2));
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
