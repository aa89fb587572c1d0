import { formatLapTime, isClean, lapsInOrder, mayBeBest, type Run, type RunSummary } from "#domain";
import { median, usualDecimals } from "#stats";
import { counted, sayUsual } from "#words";

/**
 * A run in one line.
 * @example "6 laps · best 1:25.118 · usual 1:25.902"
 */
export function runInShort(run: Run): string {
  return (run.summary ? summaryParts(run.summary) : lapParts(run)).filter(Boolean).join(" · ");
}

function summaryParts({ laps, bestMs, bestDecimals, usualMs, usualDecimals, off }: RunSummary) {
  return [
    `summary: ${counted(laps, "lap")}`,
    bestMs !== undefined && `best ${formatLapTime(bestMs, bestDecimals)}`,
    usualMs !== undefined && `usual ${sayUsual(usualMs, usualDecimals)}`,
    off !== undefined && off > 0 && `${off} off`,
  ];
}

function lapParts(run: Run) {
  const laps = lapsInOrder(run);
  if (laps.length === 0) return ["no laps yet"];
  const [best] = laps.filter(mayBeBest).sort((a, b) => a.ms - b.ms);
  const clean = laps.filter(isClean);
  const usual = median(clean.map(({ ms }) => ms));
  const driven = run.lapsDriven !== undefined && run.lapsDriven > laps.length ? ` of ${run.lapsDriven}` : "";
  return [
    `${laps.length}${driven} ${laps.length === 1 && driven === "" ? "lap" : "laps"}`,
    best !== undefined && `best ${formatLapTime(best.ms, best.decimals)}`,
    usual !== undefined && clean.length > 1 && `usual ${sayUsual(usual, usualDecimals(clean))}`,
  ];
}
