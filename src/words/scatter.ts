import type { Figure } from "#domain";
import type { Consistency } from "#stats";
import { hundredths, percents } from "./amount.ts";
import { sayTooFew } from "./reason.ts";

/**
 * Scatter from lap to lap, in seconds and in percent of the usual lap.
 * @example "± 0.31 s · 0.37 %"
 */
export function sayScatter(scatter: Figure<Consistency>): string {
  return scatter.known ? scatterInWords(scatter.value) : sayTooFew(scatter.reason);
}

/** "± 0.31 s · 0.37 %" */
export function scatterInWords({ scatterMs, percent }: Pick<Consistency, "scatterMs" | "percent">): string {
  return `± ${hundredths.say(scatterMs)} · ${percents.say(percent)}`;
}
