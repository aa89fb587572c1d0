export { accountLineMeanings, accountLineNames, accountReading, accountTitle } from "./account.ts";
export { cautions } from "./cautions.ts";
/** Figures in sentences: the finding first, then the figures. */
export { sayCounts } from "./counts.ts";
export type { Evidence } from "./evidence.ts";
export { sayLapTime } from "./lapTime.ts";
export { type NextRun, type NextRunContext, suggestNextRun } from "./nextRun.ts";
export { sayAgainstRun, sayAgainstTarget, sayMistakes, sayPointedAt, sayTrendInRun } from "./runLines.ts";
export { sayRun } from "./runSays.ts";
export { sayScatter } from "./scatter.ts";
export { sayTooFew } from "./tooFew.ts";
