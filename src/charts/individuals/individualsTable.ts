import { formatLapTime } from "#domain";
import type { SessionChart } from "#stats";
import type { ChartTable } from "../frame/chartTable.ts";

/** The pace laps of one session, and why some are pointed at. */
export function individualsTable({ laps, pointedAt }: SessionChart): ChartTable {
  const reasons = new Map(pointedAt.map((lap) => [lap.index, lap.reasons.join(", ")]));
  return {
    columns: [
      { key: "lap", title: "pace lap", csvTitle: "pace_lap" },
      { key: "run", title: "run", csvTitle: "run", figures: true },
      { key: "time", title: "time", csvTitle: "time_s", figures: true, strong: true },
      { key: "why", title: "worth a second look", csvTitle: "pointed_at_for" },
    ],
    rows: laps.map(({ lapId, run, ms }, index) => ({
      id: lapId,
      cells: {
        lap: { text: String(index + 1), value: index + 1 },
        run: { text: String(run), value: run },
        time: { text: formatLapTime(ms), value: ms / 1000 },
        why: { text: reasons.get(index) ?? "" },
      },
    })),
  };
}

/** "pace lap 7, run 2: 1:24.402, worth a second look: outside the limits" */
export function sayIndividual({ laps, pointedAt }: SessionChart, index: number): string {
  const lap = laps[index];
  if (lap === undefined) return "";
  const why = pointedAt.find((pointed) => pointed.index === index);
  const words = why === undefined ? "" : `, worth a second look: ${why.reasons.join(", ")}`;
  return `pace lap ${index + 1}, run ${lap.run}: ${formatLapTime(lap.ms)}${words}`;
}
