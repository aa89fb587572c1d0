import type { Effort } from "#domain";

/** How hard a run is driven. */
export const effortWords: Readonly<Record<Effort, string>> = {
  easy: "easy",
  learning: "learning effort",
  brisk: "brisk",
  full: "full effort",
};
