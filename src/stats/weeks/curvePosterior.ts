import { median } from "#numbers";
import { correlations, flat, halfLives, spans } from "./curveGrid.ts";
import { fitLevels } from "./fitLevels.ts";
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
  /** Likeliest floor in ms and sizes of the events without practice, and what each ms of span takes from them. */
  readonly without: readonly number[];
  readonly perSpan: readonly number[];
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
  const cells: (Omit<CurveCell, "weight"> & { weight: number })[] = [];
  let top = Number.NEGATIVE_INFINITY;
  for (const correlation of correlations) {
    const fit = fitLevels(correlation, history, places, columns, usual);
    for (const halfLife of [Infinity, ...halfLives]) {
      const isFlat = halfLife === Infinity;
      const decay = fit.of(places.map((place) => 2 ** (-place / halfLife)));
      const cross = fit.level.dot(decay);
      const perSpan = decay.coefficients;
      const { without, lower } = fit;
      for (const option of isFlat ? [flat] : spans) {
        const span = option.share * usual;
        const left = fit.level.squares - 2 * span * cross + span ** 2 * decay.squares;
        const sumOfSquares = prior + Math.max(0, left);
        const share = isFlat ? 1 : 1 / halfLives.length;
        const weight =
          Math.log(option.prior * share) - fit.halfLogs - (degreesOfFreedom / 2) * Math.log(sumOfSquares);
        cells.push({ weight, span, halfLife, correlation, sumOfSquares, without, perSpan, lower });
        top = Math.max(top, weight);
      }
    }
  }
  weigh(cells, top);
  const flatChance = cells.reduce((sum, cell) => sum + (cell.span === 0 ? cell.weight : 0), 0);
  return { usual, degreesOfFreedom, columns, cells, flatChance };
}

/** Turns the logarithms of weights into weights that add up to 1. */
function weigh(cells: readonly { weight: number }[], top: number): void {
  let total = 0;
  for (const cell of cells) {
    cell.weight = Math.exp(cell.weight - top);
    total += cell.weight;
  }
  for (const cell of cells) cell.weight /= total;
}
