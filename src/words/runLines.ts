import { type Figure, formatDelta, formatLapTime } from "#domain";
import type { AgainstRun, AgainstTarget, PointedAt, PointedAtFor, RunFigures, RunTrend } from "#stats";
import { hundredths, thousandths } from "./amount.ts";
import { clearChangeFromRun } from "./clearChangeFromRun.ts";
import { asSentence, counted, listed } from "./counted.ts";
import { sayByChance } from "./individuals.ts";
import { sayLacking, sayTooFew } from "./reason.ts";
import { isClear, isSame, pace, sayBetween, sayClear, sayNotClear } from "./shift.ts";

/** How the pace moves inside a run; why that cannot be told names what it is about. */
export function sayTrendInRun(trend: Figure<RunTrend>): string {
  if (!trend.known) return `Faster or slower through the run: ${sayLacking(trend.reason)}`;
  const { msPerLap: estimate, low, high } = trend.value;
  if (isSame({ low, high })) return `The same pace through the run, in ${counted(trend.value.laps, "lap")}`;
  if (!isClear({ low, high }))
    return `${asSentence(sayNotClear(pace, " through the run"))}: ${sayBetween({ low, high }, thousandths, pace)} a lap, in ${counted(trend.value.laps, "lap")}`;
  return asSentence(sayClear({ estimate, low, high }, thousandths, pace, " a lap through the run"));
}

/** A run's usual lap against that of the run before it. */
export function sayAgainstRun(against: Figure<AgainstRun>): string {
  if (!against.known) return `Against the run before: ${sayLacking(against.reason)}`;
  const { n, low, high } = against.value;
  if (isSame({ low, high })) return `The same as run ${n}`;
  if (!isClear({ low, high }))
    return `${asSentence(sayNotClear(pace, ` than run ${n}`))}: ${sayBetween({ low, high }, hundredths, pace)}`;
  return `${asSentence(clearChangeFromRun(against.value))}: ${sayBetween({ low, high }, hundredths, pace)}`;
}

/** Laps that reached the target, and how far best and usual lap are from it. */
export function sayAgainstTarget(against: Figure<AgainstTarget>): string {
  if (!against.known) return sayTooFew(against.reason);
  const { targetMs, best, bestDecimals, usual, usualDecimals, reached, laps } = against.value;
  const share =
    laps === 0 ? "" : `${reached} of ${counted(laps, "lap")} at ${formatLapTime(targetMs)} or under; `;
  const usually = usual === undefined ? "" : `, usual ${formatDelta(usual, usualDecimals)} s`;
  return asSentence(`${share}best ${formatDelta(best, bestDecimals)} s${usually}`);
}

/** Own mistakes of a run or session, laps without a time among them. */
export function sayMistakes({ mistakes, counts }: Pick<RunFigures, "mistakes" | "counts">): string {
  return `${mistakes === 0 ? "No mistakes" : counted(mistakes, "mistake")} in ${counted(counts.driven, "lap")}`;
}

const reasonWords: Readonly<Record<PointedAtFor, string>> = {
  "far out": "far out",
  "outside the limits": "outside the limits",
  "eight in a row on one side": "at the end of eight on one side of the mean",
};

/**
 * Laps worth a second look, and how often chance alone makes one; empty where none is pointed at.
 * @param of laps among which they are pointed at
 */
export function sayPointedAt(laps: readonly PointedAt[], of: number): string {
  if (laps.length === 0) return "";
  const each = laps.map(
    ({ number, reasons }) => `lap ${number} (${reasons.map((reason) => reasonWords[reason]).join(", ")})`,
  );
  return `Worth a second look: ${listed(each)}. ${sayByChance(of, "run")}`;
}
