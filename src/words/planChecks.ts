import type { PlanFigure } from "#domain";

/** By which figure a run of the plan is told, as it is chosen in a form: the value stands behind it. */
export const checkWords: Readonly<Record<PlanFigure, string>> = {
  clean: "clean laps, at least",
  driven: "all laps driven",
  usual: "usual lap, at most",
  best: "best lap, at most",
  scatter: "laps differ by at most",
  corner: "mistakes at the corner, at most",
  sector: "time in the sector, at most",
  drill: "tries of ten that work",
};
