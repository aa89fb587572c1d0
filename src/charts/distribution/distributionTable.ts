import { formatLapTime } from "#domain";
import type { LapBin, LapDistribution } from "#stats";
import type { ChartTable } from "../frame/chartTable.ts";

/** The two periods' laps by their time. */
export function distributionTable({ bins, now, before }: LapDistribution): ChartTable {
  const row = (
    id: string,
    from: number | undefined,
    to: number | undefined,
    now: number,
    before: number,
  ) => ({
    id,
    cells: {
      from:
        from === undefined
          ? { text: "slower", value: "" }
          : { text: formatLapTime(from), value: from / 1000 },
      to: to === undefined ? { text: "—", value: "" } : { text: formatLapTime(to), value: to / 1000 },
      now: { text: String(now), value: now },
      before: { text: String(before), value: before },
    },
  });
  const [slowerNow, slowerBefore] = [now?.slower ?? 0, before?.slower ?? 0];
  const slower =
    slowerNow + slowerBefore > 0 ? [row("slower", undefined, undefined, slowerNow, slowerBefore)] : [];
  return {
    columns: [
      { key: "from", title: "lap time from", csvTitle: "lap_time_from_s", unbroken: true },
      { key: "to", title: "to under", csvTitle: "lap_time_to_under_s", figures: true },
      { key: "before", title: "laps before", csvTitle: "laps_before", figures: true },
      { key: "now", title: "laps now", csvTitle: "laps_now", figures: true, strong: true },
    ],
    rows: [...bins.map((bin) => row(String(bin.from), bin.from, bin.to, bin.now, bin.before)), ...slower],
  };
}

/** "1:24.200 to 1:24.400: 12 of 104 laps" */
export function sayBin({ from, to }: LapBin, laps: number, all: number): string {
  return `${formatLapTime(from)} to ${formatLapTime(to)}: ${laps} of ${all === 1 ? "1 lap" : `${all} laps`}`;
}
