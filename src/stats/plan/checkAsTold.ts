import type { PlanCheck, PlanFigure } from "#domain";

const HUNDREDTH = 10;
/** To how much a figure is told, ms. */
const steps: Partial<Readonly<Record<PlanFigure, number>>> = { usual: HUNDREDTH, scatter: HUNDREDTH };

/**
 * What a run is judged by, rounded up to what is told of it, so that the aim that is read is the aim that is judged.
 * @param value ms; a median may be half of one
 * @example checkAsTold("usual", 56_237) // { figure: "usual", value: 56_240 }, told as "56.24 or under"
 */
export function checkAsTold(figure: PlanFigure, value: number): PlanCheck {
  const step = steps[figure] ?? 1;
  return { figure, value: Math.ceil(value / step) * step };
}
