import type { RigTestReport } from "#stats";
import { hundredths } from "./amount.ts";
import { asSentence } from "./counted.ts";
import { sayTooFew } from "./reason.ts";
import { seldomTheRigs } from "./rigStep.ts";
import { isClear, isSame, pace, type Shift, sayBetween, sayClear, sayNotClear } from "./shift.ts";

/**
 * What a rig test found, seen from one of its two settings: how it drives against the other one.
 * @example "Faster by 0.21 s, very likely at least 0.11 s"
 * @example "Not clearly faster or slower: between 0.10 s faster and 0.14 s slower"
 */
export function sayRigTest(report: RigTestReport, side: "A" | "B"): string {
  const { verdict } = report;
  if (!verdict.known) return sayTooFew(verdict.reason);
  const shift = shiftOf(verdict.value, side);
  if (isSame(shift)) return "No difference";
  if (!isClear(shift)) return `${asSentence(sayNotClear(pace))}: ${sayBetween(shift, hundredths, pace)}`;
  const said = asSentence(sayClear(shift, hundredths, pace));
  return report.isOver && report.isQuestioned ? `${said}; ${seldomTheRigs}` : said;
}

/** The change from the other setting to this one. A test counts B less A. */
export function shiftOf({ estimate, low, high }: Shift, side: "A" | "B"): Shift {
  if (side === "B") return { estimate, low, high };
  return { estimate: -estimate, low: -high, high: -low };
}
