import type { ChartTable } from "../frame/chartTable.ts";

/** A place of the apex: how much of the corner is turned up to it, in percent, and the seconds lost against the best one. */
export interface ApexPoint {
  readonly percent: number;
  readonly lost: number;
}

/** What each place of the apex loses. */
export function apexTable(points: readonly ApexPoint[]): ChartTable {
  return {
    columns: [
      { key: "apex", title: "apex at", csvTitle: "apex_percent", figures: true },
      { key: "lost", title: "seconds lost", csvTitle: "lost_s", figures: true, strong: true },
    ],
    rows: points.map(({ percent, lost }) => ({
      id: String(percent),
      cells: {
        apex: { text: `${percent} %`, value: percent },
        lost: { text: lost.toFixed(2), value: Math.round(lost * 1000) / 1000 },
      },
    })),
  };
}

/** "apex after 62 % of the turn: 0.04 s lost" */
export function sayApexPoint({ percent, lost }: ApexPoint): string {
  return `apex after ${percent} % of the turn: ${lost === 0 ? "the best place" : `${lost.toFixed(2)} s lost`}`;
}
