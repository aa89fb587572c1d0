import { type Figure, unknown } from "#domain";

/** A figure of a run that is read by its clean laps: where there are too few, it is those that it lacks, not pace laps. */
export function ofCleanLaps<T>(figure: Figure<T>): Figure<T> {
  if (figure.known || !("needs" in figure.reason)) return figure;
  const { of } = figure.reason;
  const clean = of === "pace lap" ? "clean lap" : of === "exact pace lap" ? "exact clean lap" : of;
  return unknown({ ...figure.reason, of: clean });
}
