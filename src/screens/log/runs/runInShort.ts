import { formatLapTime, lapsInOrder, type Run, type RunSummary } from "#domain";
import type { RunTimes } from "#stats";
import { counted, sayDrillCount, sayUsual } from "#words";

/**
 * A run in one line.
 * @param times of that run
 * @example "6 laps · best 1:25.118 · usual 1:25.902"
 */
export function runInShort(run: Run, times: RunTimes): string {
  const parts = run.summary ? summaryParts(run.summary) : lapParts(run, times);
  return [...parts, ...(run.counts ?? []).map(sayDrillCount)].filter(Boolean).join(" · ");
}

function summaryParts({ laps, bestMs, bestDecimals, usualMs, usualDecimals, off }: RunSummary) {
  return [
    `summary: ${counted(laps, "lap")}`,
    bestMs !== undefined && `best ${formatLapTime(bestMs, bestDecimals)}`,
    usualMs !== undefined && `usual ${sayUsual(usualMs, usualDecimals)}`,
    off !== undefined && off > 0 && `${off} off`,
  ];
}

function lapParts(run: Run, { best, usual, usualDecimals }: RunTimes) {
  const laps = lapsInOrder(run);
  if (laps.length === 0) return [run.counts === undefined ? "no laps yet" : ""];
  const driven = run.lapsDriven !== undefined && run.lapsDriven > laps.length ? ` of ${run.lapsDriven}` : "";
  return [
    `${laps.length}${driven} ${laps.length === 1 && driven === "" ? "lap" : "laps"}`,
    best.known && `best ${formatLapTime(best.value.ms, best.value.decimals)}`,
    usual.known && `usual ${sayUsual(usual.value, usualDecimals)}`,
  ];
}
