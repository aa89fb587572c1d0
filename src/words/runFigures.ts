import { differenceShown, formatLapTime, formatSeconds, latestMs } from "#domain";
import type { AgainstBest, KnownTime, RunReport } from "#stats";
import { percents } from "./amount.ts";
import { counted } from "./counted.ts";
import { sayReason } from "./reason.ts";
import { sayUsual } from "./usualLap.ts";

/** A figure as it stands in a row of them. */
export interface RunFigure {
  readonly label: string;
  readonly value: string;
  readonly detail: string | undefined;
}

const none = "—";

/** The three numbers of a run: best, usual and scatter, each with what it rests on or why there is none. */
export function sayRunFigures(report: RunReport): readonly RunFigure[] {
  return [bestOf(report), usualOf(report), scatterOf(report)];
}

function bestOf({ best, againstBest }: RunReport): RunFigure {
  if (!best.known) return { label: "best", value: none, detail: sayReason(best.reason) };
  const { ms, decimals } = best.value;
  const detail = againstBest.known ? sayToBest(best.value, againstBest.value) : undefined;
  return { label: "best", value: formatLapTime(ms, decimals), detail };
}

function usualOf({ usual, usualDecimals, isUsualGiven, laps }: RunReport): RunFigure {
  if (!usual.known) return { label: "usual", value: none, detail: sayReason(usual.reason) };
  const detail = isUsualGiven ? "as you gave it" : `the middle one of ${counted(laps, "lap")}`;
  return { label: "usual", value: sayUsual(usual.value, usualDecimals), detail };
}

function scatterOf({ scatter, counts }: RunReport): RunFigure {
  const figure = sayScatterFigure(scatter);
  const isUnwritten = !scatter.known && counts.driven > 0 && counts.notWritten === counts.driven;
  return isUnwritten ? { ...figure, detail: "no laps written down" } : figure;
}

/** The scatter of a run or a session, or why there is none. */
export function sayScatterFigure(scatter: RunReport["scatter"]): RunFigure {
  if (!scatter.known) return { label: "laps differ by", value: none, detail: sayReason(scatter.reason) };
  const { scatterMs, percent } = scatter.value;
  return {
    label: "laps differ by",
    value: formatSeconds(scatterMs, 2),
    detail: `${percents.say(percent)} of a lap`,
  };
}

/**
 * The best of a run beside the personal best before it, with no more decimals than both are known to.
 * @example "0.312 s off PB"
 * @example "at least 0.3 s faster than the old PB"
 */
export function sayToBest(best: KnownTime, { pbMs, pbDecimals, isNew, isLevel }: AgainstBest): string {
  if (isLevel)
    return best.decimals < 3 || pbDecimals < 3
      ? "the same as PB, as far as its digits tell"
      : "the same as PB";
  if (isNew) return `${sayLeast(best, { ms: pbMs, decimals: pbDecimals })} faster than the old PB`;
  const { ms, decimals } = differenceShown({ ms: pbMs, decimals: pbDecimals }, best);
  return `${decimals < 3 ? "about " : ""}${formatSeconds(ms, decimals)} off PB`;
}

/**
 * How much faster a time is than another, whatever the digits that are not known; rounded towards zero.
 * @example "0.313 s", "at least 0.2 s", "just"
 */
export function sayLeast(
  best: Pick<KnownTime, "ms" | "decimals">,
  old: Pick<KnownTime, "ms" | "decimals">,
): string {
  const decimals = Math.min(best.decimals, old.decimals);
  const unit = 10 ** (3 - decimals);
  const least = Math.floor((old.ms - latestMs(best)) / unit) * unit;
  if (least <= 0) return "just";
  return `${decimals < 3 ? "at least " : ""}${formatSeconds(least, decimals)}`;
}
