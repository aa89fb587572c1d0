import { cholesky, solveLower, solveUpper } from "./cholesky.ts";
import type { PastSession } from "./history.ts";
import type { EventColumn } from "./sessionEvents.ts";

/** A column of values freed of correlation and of all that floor and events explain. */
interface Freed {
  readonly coefficients: readonly number[];
  readonly squares: number;
  readonly dot: (other: Freed) => number;
  readonly values: readonly number[];
  readonly explained: readonly number[];
}

/** Generalised least squares of floor and events for one correlation of neighbouring sessions. */
export function fitLevels(
  correlation: number,
  history: readonly PastSession[],
  places: readonly number[],
  columns: readonly EventColumn[],
  usual: number,
) {
  const rest = Math.sqrt(1 - correlation ** 2);
  const whiten = (values: readonly number[]) =>
    values.map((value, i) => (i === 0 ? value : (value - correlation * (values[i - 1] ?? 0)) / rest));
  const design = [
    whiten(places.map(() => 1)),
    ...columns.map((column) => whiten(places.map((place, session) => column.at(session, place)))),
  ];
  const precision = design.map((a, i) =>
    design.map((b, j) => dot(a, b) + (i === j && i > 0 ? 1 / (columns[i - 1]?.variance ?? 1) : 0)),
  );
  const lower = cholesky(precision);
  const of = (raw: readonly number[]): Freed => {
    const values = whiten(raw);
    const explained = solveLower(
      lower,
      design.map((column) => dot(column, values)),
    );
    return {
      values,
      explained,
      coefficients: solveUpper(lower, explained),
      squares: dot(values, values) - dot(explained, explained),
      dot: (other) => dot(values, other.values) - dot(explained, other.explained),
    };
  };
  const expected = (session: number, place: number) =>
    columns.reduce((sum, column) => sum + column.mean * column.at(session, place), 0);
  const level = of(history.map((session, i) => session.medianMs - usual - expected(i, places[i] ?? 0)));
  const logOfPrecision = lower.reduce((sum, row, i) => sum + Math.log(row[i] ?? 1), 0);
  const logOfCorrelation = ((history.length - 1) / 2) * Math.log(1 - correlation ** 2);
  return {
    of,
    level,
    lower,
    without: level.coefficients.map((value, i) => value + (i === 0 ? usual : (columns[i - 1]?.mean ?? 0))),
    halfLogs: logOfCorrelation + logOfPrecision,
  };
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}
