import { differenceShown, formatSeconds, type ShownTime } from "#domain";
import type { SessionReport } from "#stats";
import { asSentence } from "./counted.ts";
import { sayLapTime } from "./lapTime.ts";
import { sayLeast } from "./runFigures.ts";

/**
 * What a session says first: what it did to the PB, and how many of its timed laps were clean.
 * @param pbBefore best of the page before the session
 * @example "PB by 0.414 s; 13 of 16 laps clean"
 */
export function saySession(
  { newBests, best, timed, clean }: Pick<SessionReport, "newBests" | "best" | "timed" | "clean">,
  pbBefore: ShownTime | undefined,
): string {
  const newest = newBests.at(-1);
  const parts = [
    newest === undefined
      ? best && pbBefore && offBest(best, pbBefore)
      : pbBefore === undefined
        ? `${newBests.length === 1 ? "first PB here," : "PB here now"} ${sayLapTime(newest.ms, newest.decimals)}`
        : `PB by ${sayLeast(newest, { ms: pbBefore.ms, decimals: pbBefore.decimals ?? 3 })}`,
    timed === 0 ? undefined : `${clean} of ${timed} ${timed === 1 ? "lap" : "laps"} clean`,
  ].filter((part) => part !== undefined);
  return asSentence(parts.length === 0 ? "no lap with a time" : parts.join("; "));
}

function offBest(best: ShownTime, pb: ShownTime): string {
  const { ms, decimals } = differenceShown(pb, best);
  if (ms <= 0) return "best lap the same as your PB";
  return `best lap ${decimals < 3 ? "about " : ""}${formatSeconds(ms, decimals)} off PB`;
}
