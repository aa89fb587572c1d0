import { formatLapTime, formatPercent, isClean, latestMs } from "#domain";
import type { Ask, EntryContext, EntryForm, TypedLap } from "./context.ts";
import type { LapTimes } from "./lapTimes.ts";
import type { Sectors } from "./sectors.ts";
import { medianOf, scaledDeviation } from "./usual.ts";
import { wholeTime } from "./wholeTime.ts";

const farUnderPb = 0.015;
const farOverUsual = 0.1;
const farOverDeviations = 6;

/**
 * The reasons for which a lap is only taken at a second Enter: it would beat the PB by more than 1.5 %, a short form
 * would make a PB, a lap without a remark lies beyond the usual (6 scaled median absolute deviations and a tenth
 * slower), the first lap has only seconds and may lack its minute, or times are taken for the sectors of a layout
 * that nothing is known of.
 * @param sorted sorted times of the session's pace laps
 */
export function asksOf(
  lap: TypedLap,
  { form, mayLackMinute, found }: Pick<LapTimes, "form" | "mayLackMinute" | "found">,
  context: EntryContext,
  sorted: readonly number[],
): Ask[] {
  const { ms, decimals = 3 } = lap;
  if (ms === undefined) return [];
  const asks: Ask[] = [];
  const shown = formatLapTime(ms, decimals);
  if (found !== undefined) asks.push(sectorsAsk(found));
  if (context.isPractice && isClean(lap)) asks.push(...pbAsks(ms, decimals, form, context));
  const over = lap.remarks.length === 0 ? overUsual(ms, sorted) : undefined;
  if (over !== undefined)
    asks.push({
      why: "far over usual",
      sentence: `${shown} is ${formatPercent(over)} over this session's usual lap and has no remark. Enter again if it is right.`,
    });
  if (mayLackMinute)
    asks.push({
      why: "minute left out",
      sentence: `This is read as ${shown} s, under a minute. Enter again if it is right, or write ${wholeTime(ms + 60_000, decimals)} with its minute.`,
    });
  return asks;
}

function sectorsAsk({ times, sum }: Sectors): Ask {
  return {
    why: "sectors found",
    sentence: `Read as ${times.length} sectors of one lap, ${sum} together. Enter again if this layout has ${times.length} sectors; laps go one a line.`,
  };
}

function pbAsks(ms: number, decimals: number, form: EntryForm, { pbMs, pbDecimals }: EntryContext): Ask[] {
  const asks: Ask[] = [];
  const shown = formatLapTime(ms, decimals);
  if (pbMs !== undefined && latestMs({ ms, decimals }) >= pbMs) return [];
  const pb = pbMs === undefined ? undefined : formatLapTime(pbMs, pbDecimals ?? 3);
  const share = pbMs === undefined ? 0 : (pbMs - ms) / pbMs;
  if (share > farUnderPb)
    asks.push({
      why: "far under PB",
      sentence: `${shown} would beat your PB, ${pb}, by ${formatPercent(share)}. Enter again if it is right.`,
    });
  if (form === "short")
    asks.push({
      why: "short form PB",
      sentence: `The digits were completed to ${shown}, ${pb === undefined ? "your first PB here" : `a new PB (before: ${pb})`}. Enter again if it is right.`,
    });
  return asks;
}

/** How far a lap lies over the usual, as a share, where that is beyond all its spread; else undefined. */
function overUsual(ms: number, sorted: readonly number[]): number | undefined {
  const median = medianOf(sorted);
  if (median === undefined || ms < median * (1 + farOverUsual)) return undefined;
  const deviation = scaledDeviation(sorted);
  if (deviation === undefined || ms <= median + farOverDeviations * deviation) return undefined;
  return (ms - median) / median;
}
