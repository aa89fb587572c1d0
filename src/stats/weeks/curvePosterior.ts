import { median } from "../sample/median.ts";
import { cholesky, solveLower, solveUpper } from "./cholesky.ts";
import { correlations, flat, halfLives, spans } from "./curveGrid.ts";
import { type PastSession, placeOf, requireSessions } from "./history.ts";
import { type EventColumn, eventColumns, type SessionEvent } from "./sessionEvents.ts";

/** One cell of the grid, with all that is needed to draw from it. */
export interface CurveCell {
  readonly weight: number;
  /** Span in ms, 0 for the flat curve. */
  readonly span: number;
  /** Half-life in laps; Infinity for the flat curve. */
  readonly halfLife: number;
  readonly correlation: number;
  /** 3·s₀² + S, in ms²: divided by a chi-squared number it is a draw of σ². */
  readonly sumOfSquares: number;
  /** Floor in ms, then the size of each event, at their likeliest. */
  readonly coefficients: readonly number[];
  /** Lower triangle of their precision in units of 1/σ². */
  readonly lower: readonly (readonly number[])[];
}

export interface CurvePosterior {
  /** Median of the session medians, in ms. */
  readonly usual: number;
  readonly degreesOfFreedom: number;
  readonly columns: readonly EventColumn[];
  /** Cells with their weights, which add up to 1. */
  readonly cells: readonly CurveCell[];
  /** Probability that the driver's level does not move with practice. */
  readonly flatChance: number;
}

/** Degrees of freedom and scale (as a share of the usual lap) of the prior of σ². */
const priorDegrees = 3;
const priorScale = 0.004;

/**
 * Posterior of the practice curve T(x) = a + b·2^(−x/h) on a grid over half-life, span and the correlation of
 * neighbouring sessions; floor, events and σ² in closed form (normal model with a scaled inverse-χ² variance:
 * Gelman and others, Bayesian Data Analysis, 2013, chapters 2, 3, 14). Our methods, §5.
 * @param history at least one session, oldest first
 * @throws RangeError for a value that is not finite, naming it
 */
export function curvePosterior(
  history: readonly PastSession[],
  events: readonly SessionEvent[] = [],
): CurvePosterior {
  requireSessions(history);
  const usual = median(history.map((session) => session.medianMs));
  if (usual === undefined) throw new RangeError("history is empty: a practice curve needs a session");
  const columns = eventColumns(events, history, usual);
  const degreesOfFreedom = priorDegrees + history.length - 1;
  const places = history.map(placeOf);
  const prior = priorDegrees * (priorScale * usual) ** 2;
  const cells = correlations.flatMap((correlation) => {
    const fit = fitWith(correlation, history, places, columns, usual);
    return [Infinity, ...halfLives].flatMap((halfLife) => {
      const decay = fit.of(places.map((place) => 2 ** (-place / halfLife)));
      const options = halfLife === Infinity ? [flat] : spans;
      const share = halfLife === Infinity ? 1 : 1 / halfLives.length;
      return options.map((option) => {
        const span = option.share * usual;
        const left = fit.level.squares - 2 * span * fit.level.dot(decay) + span ** 2 * decay.squares;
        const sumOfSquares = prior + Math.max(0, left);
        const logWeight =
          Math.log(option.prior * share) - fit.halfLogs - (degreesOfFreedom / 2) * Math.log(sumOfSquares);
        const coefficients = fit.level.coefficients.map(
          (level, index) => level - span * (decay.coefficients[index] ?? 0) + (fit.offsets[index] ?? 0),
        );
        return { logWeight, span, halfLife, correlation, sumOfSquares, coefficients, lower: fit.lower };
      });
    });
  });
  const top = cells.reduce((most, cell) => Math.max(most, cell.logWeight), -Infinity);
  const total = cells.reduce((sum, cell) => sum + Math.exp(cell.logWeight - top), 0);
  const weighted = cells.map(({ logWeight, ...cell }) => ({
    ...cell,
    weight: Math.exp(logWeight - top) / total,
  }));
  const flatChance = weighted.reduce((sum, cell) => sum + (cell.span === 0 ? cell.weight : 0), 0);
  return { usual, degreesOfFreedom, columns, cells: weighted, flatChance };
}

/** A column of values freed of correlation and of all that floor and events explain. */
interface Freed {
  readonly coefficients: readonly number[];
  readonly squares: number;
  readonly dot: (other: Freed) => number;
  readonly values: readonly number[];
  readonly explained: readonly number[];
}

/** Generalised least squares of floor and events for one correlation of neighbouring sessions. */
function fitWith(
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
    offsets: [usual, ...columns.map((column) => column.mean)],
    halfLogs: logOfCorrelation + logOfPrecision,
  };
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}
