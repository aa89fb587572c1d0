import { acrossTable } from "#charts/across/acrossTable.ts";
import { bridgeTable } from "#charts/bridge/bridgeTable.ts";
import { calendarTable } from "#charts/calendar/calendarTable.ts";
import { consistencyTable } from "#charts/consistency/consistencyTable.ts";
import { distributionTable } from "#charts/distribution/distributionTable.ts";
import type { ChartTable } from "#charts/frame/chartTable.ts";
import { individualsTable } from "#charts/individuals/individualsTable.ts";
import { progressTable } from "#charts/progress/progressTable.ts";
import { rangeRowsTable } from "#charts/rangeRows/rangeRowsTable.ts";
import type { Problem } from "#domain";
import {
  exportedWithoutLaps,
  guessDelimiter,
  isBackupText,
  isPasteText,
  type OwnTable,
  ownTableOf,
  readCsv,
} from "#files";

const nothing = { id: "", label: "", ms: 0 };
const charts: readonly (readonly [string, ChartTable])[] = [
  ["progress", progressTable({ sessions: [] })],
  ["consistency", consistencyTable([])],
  ["the time account", bridgeTable([], nothing)],
  ["practice days", calendarTable([])],
  ["how laps are spread", distributionTable({ bins: [], now: undefined, before: undefined })],
  ["one session’s laps", individualsTable({ laps: [], chart: undefined, pointedAt: [] })],
  ["differences", rangeRowsTable([], { say: String, csvUnit: "s" })],
  ["shares", rangeRowsTable([], { say: String, csvUnit: "percent" })],
  ["all combos", acrossTable([], { column: "figure", axis: "", say: String })],
];

/** Each chart's table twice: as it is saved, and as it is copied from the page. */
const chartTables = charts.flatMap(([chart, { columns }]): readonly OwnTable[] => {
  const name = `the table behind the chart of ${chart}`;
  return [
    { name, heads: columns.map(({ csvTitle }) => csvTitle) },
    { name, heads: columns.map(({ title }) => title) },
  ];
});

/** Only the first signs and rows are looked at: a head stands there or nowhere. */
const looked = 65_536;
const rowsLooked = 30;

/** Why a text of this app's own making is no table of laps; undefined for any other text. */
export function whyNoLaps(text: string): Problem | undefined {
  const start = text.slice(0, looked);
  if (isPasteText(start) || isBackupText(start))
    return problem(
      "This is a backup of a Lap Ledger logbook.",
      "Choose a backup file under Restore, or put text that was sent into Send and receive.",
    );
  for (const { cells } of readCsv(start, guessDelimiter(start), rowsLooked)) {
    const table = ownTableOf(cells, [...exportedWithoutLaps, ...chartTables]);
    if (table !== undefined)
      return problem(
        `This is Lap Ledger’s own export, ${table.name}. It cannot be read back as laps.`,
        "Export the table of laps instead: that one can be imported.",
      );
  }
  return undefined;
}

function problem(wrong: string, right: string): Problem {
  return { at: 0, length: 0, wrong, right };
}
