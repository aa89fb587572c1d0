import { cholesky, solveLower, solveUpper } from "./cholesky.ts";

/** A model at given parameters: for each point its value and its slope along each parameter. */
export type Model = (
  parameters: readonly number[],
) => readonly { readonly value: number; readonly slopes: readonly number[] }[];

/**
 * Gauss–Newton steps from a start near the least-squares answer, each halved until it is no step back; ends where no
 * step helps.
 * @returns the parameters and the residual sum of squares
 */
export function polish(
  model: Model,
  y: readonly number[],
  start: readonly number[],
): { parameters: readonly number[]; squares: number } {
  const squaresAt = (parameters: readonly number[]) =>
    model(parameters).reduce((sum, { value }, i) => sum + ((y[i] ?? 0) - value) ** 2, 0);
  let parameters = start;
  let squares = squaresAt(start);
  for (let round = 0; round < 30; round++) {
    const direction = step(model(parameters), y);
    let next = parameters;
    let better = Number.POSITIVE_INFINITY;
    for (let share = 1; share > 1e-4 && !(better < squares); share /= 2) {
      next = parameters.map((value, i) => value + share * (direction[i] ?? 0));
      better = squaresAt(next);
    }
    if (!(better < squares)) break;
    parameters = next;
    squares = better;
  }
  return { parameters, squares };
}

/** One Gauss–Newton step, its columns scaled to length 1 first. */
function step(points: ReturnType<Model>, y: readonly number[]): number[] {
  const count = points[0]?.slopes.length ?? 0;
  const columns = Array.from({ length: count }, (_, j) => points.map(({ slopes }) => slopes[j] ?? 0));
  const lengths = columns.map((column) => Math.hypot(...column) || 1);
  const scaled = columns.map((column, j) => column.map((value) => value / (lengths[j] ?? 1)));
  const dot = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
  const residuals = points.map(({ value }, i) => (y[i] ?? 0) - value);
  const lower = cholesky(scaled.map((a) => scaled.map((b) => dot(a, b))));
  const right = scaled.map((column) => dot(column, residuals));
  return solveUpper(lower, solveLower(lower, right)).map((value, j) => value / (lengths[j] ?? 1));
}
