import type { PlanCheck, PlanFigure } from "#domain";

const HUNDREDTH = 10;

/** How a figure of a run is told: a lap time cut to the hundredth, how far laps differ rounded to it; others as they are, ms. */
export function asTold(figure: PlanFigure, ms: number): number {
  if (figure === "usual") return Math.floor(ms / HUNDREDTH) * HUNDREDTH;
  return figure === "scatter" ? Math.round(ms / HUNDREDTH) * HUNDREDTH : ms;
}

/**
 * What a run is judged by, rounded up to what is told of it, so that the aim that is read is the aim that is judged.
 * @param value ms; a median may be half of one
 * @example checkAsTold("usual", 56_237) // { figure: "usual", value: 56_240 }, told as "56.24 or under"
 */
export function checkAsTold(figure: PlanFigure, value: number): PlanCheck {
  const step = figure === "usual" || figure === "scatter" ? HUNDREDTH : 1;
  return { figure, value: Math.ceil(value / step) * step };
}
