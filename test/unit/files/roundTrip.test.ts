import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import { addLap, dump } from "#db";
import { type AllRows, decimalsOf, lapsInOrder } from "#domain";
import { parsePaste } from "#entry";
import {
  type CsvStyle,
  type CsvTable,
  delimiters,
  lapsTable,
  readLaps,
  readTable,
  rigsTable,
  sessionsTable,
  tableSessions,
  targetsTable,
  writeBackup,
  writeCsv,
  writePasteText,
} from "#files";
import { acrossTable } from "../../../src/charts/across/acrossTable.ts";
import { bridgeTable } from "../../../src/charts/bridge/bridgeTable.ts";
import { calendarTable } from "../../../src/charts/calendar/calendarTable.ts";
import { consistencyTable } from "../../../src/charts/consistency/consistencyTable.ts";
import { distributionTable } from "../../../src/charts/distribution/distributionTable.ts";
import { type ChartTable, csvCells } from "../../../src/charts/frame/chartTable.ts";
import { individualsTable } from "../../../src/charts/individuals/individualsTable.ts";
import { progressTable } from "../../../src/charts/progress/progressTable.ts";
import { rangeRowsTable } from "../../../src/charts/rangeRows/rangeRowsTable.ts";
import { sessionCounts } from "../../../src/screens/data/sessionCounts.ts";
import { whyNoLaps } from "../../../src/screens/data/whyNoLaps.ts";
import { aFullLogbook } from "../../support/aFullLogbook.ts";
import { aLap } from "../../support/aLap.ts";
import { aContext } from "../entry/aContext.ts";

const styles: readonly CsvStyle[] = ([".", ","] as const).flatMap((decimal) =>
  delimiters.flatMap((delimiter) => [true, false].map((hasMark) => ({ decimal, delimiter, hasMark }))),
);

async function theRows(): Promise<AllRows> {
  const { book, runId } = await aFullLogbook();
  const sectored = aLap(83_450, {
    decimals: 2,
    sectors: [27_100, 31_450, 24_900],
    sectorDecimals: [2, 3, 1],
  });
  await addLap(book, { runId, id: book.newId(), lap: sectored });
  // As before sectors said their decimals: "1:23.5 27.1 31.4 24.9" was typed, which is 0.1 s off.
  const unsaid = aLap(83_500, { decimals: 1, sectors: [27_100, 31_400, 24_900] });
  await addLap(book, { runId, id: book.newId(), lap: unsaid });
  const rows = await dump(book);
  book.close();
  return rows;
}

/** The laps of a table as the import reads them, without being told anything. */
function imported(text: string) {
  const read = readLaps(readTable(text, {}, { cars: [], tracks: [] }), {}, "2027-01-01");
  let id = 0;
  const about = { zone: "UTC", dayStartsAt: 4, newId: () => String(id++).padStart(4, "0") };
  const { sessions } = tableSessions(read.laps, about);
  return { unread: read.unread, laps: sessions.flatMap(({ runs }) => runs.flatMap(({ laps }) => laps)) };
}

function aChart(name: string): ChartTable {
  const session = { id: "a", date: "2026-10-14", startedAt: 1, laps: 24, isPresentPage: true };
  const range = [{ id: "a", label: "clean, now", value: 83.4, low: 80.1, high: 88.25 }];
  const say = (value: number) => value.toFixed(2);
  switch (name) {
    case "progress":
      return progressTable({
        sessions: [{ ...session, median: 84_094, q1: 83_900, q3: 84_402, best: 83_704 }],
      });
    case "consistency":
      return consistencyTable([{ ...session, scatterPercent: 0.41, intervalPercent: [0.3, 0.6] }]);
    case "bridge":
      return bridgeTable([{ id: "a", label: "pace", ms: 312 }], { id: "b", label: "balance", ms: 312 });
    case "calendar":
      return calendarTable([{ date: "2026-10-14", laps: 21, sessions: 1 }]);
    case "distribution":
      return distributionTable({
        bins: [{ from: 84_200, to: 84_400, now: 5, before: 12 }],
        now: undefined,
        before: undefined,
      });
    case "individuals":
      return individualsTable({
        laps: [{ lapId: "a", run: 0, ms: 84_402 }],
        chart: undefined,
        pointedAt: [{ index: 0, reasons: ["outside the limits"] }],
      });
    case "differences":
      return rangeRowsTable(range, { say, csvUnit: "s" });
    case "shares":
      return rangeRowsTable(range, { say, csvUnit: "percent" });
    default:
      return acrossTable(
        [
          {
            id: "a",
            name: "Varnholt Ring · club hatch",
            date: "2026-10-14",
            startedAt: 1,
            laps: 120,
            value: 0.41,
          },
        ],
        {
          column: "usual to best",
          axis: "",
          say,
        },
      );
  }
}
const charts = [
  "progress",
  "consistency",
  "bridge",
  "calendar",
  "distribution",
  "individuals",
  "differences",
  "shares",
  "across",
];

/** What the browser copies of the table behind a chart. */
function copied({ columns, rows }: ChartTable): string {
  const texts = rows.map(({ cells }) => columns.map(({ key }) => cells[key]?.text ?? ""));
  return [columns.map(({ title }) => title), ...texts].map((row) => row.join("\t")).join("\n");
}

describe("the exported table of laps", () => {
  it("gives every lap again, whatever its separator and decimal sign", async () => {
    const rows = await theRows();
    const laps = rows.runs
      .filter(({ deletedAt }) => deletedAt === undefined)
      .flatMap((run) => lapsInOrder(run))
      .map(({ ms, decimals, sectors, sectorDecimals, remarks, note, source }) => ({
        ms,
        decimals,
        sectors,
        // What was not said is read as it is written: with no more decimals than each needs.
        sectorDecimals: sectorDecimals ?? sectors?.map(decimalsOf),
        remarks,
        note,
        source,
      }));
    expect(laps.map(({ sectorDecimals }) => sectorDecimals)).toContainEqual([2, 3, 1]);
    for (const style of styles) {
      const text = writeCsv(lapsTable(rows), style);
      expect(whyNoLaps(text)).toBeUndefined();
      const read = imported(text);
      expect(read.unread).toEqual([]);
      expect(
        read.laps.map(({ lap: { ms, decimals, sectors, sectorDecimals, remarks, note, source } }) => ({
          ms,
          decimals,
          sectors,
          sectorDecimals,
          remarks,
          note,
          source,
        })),
      ).toEqual(laps);
    }
  });
});

const ofSessions = (rows: AllRows) => sessionsTable(rows, sessionCounts);

describe("a table without laps is refused by its name in the import", () => {
  const exported: readonly (readonly [string, (rows: AllRows) => CsvTable])[] = [
    ["sessions", ofSessions],
    ["targets", targetsTable],
    ["rig records", rigsTable],
  ];
  it.each(exported)(
    "%s, whatever its separator and decimal sign, also without a column",
    async (name, table) => {
      const cells = table(await theRows());
      expect(cells.length).toBeGreaterThan(1);
      const narrower = cells.map((row) => row.slice(0, -1));
      for (const style of styles)
        for (const text of [writeCsv(cells, style), writeCsv(narrower, style)])
          expect(whyNoLaps(text)?.wrong).toBe(
            `This is Lap Ledger’s own export, the table of ${name}. It cannot be read back as laps.`,
          );
    },
  );

  it.each(charts)("the table behind the chart %s, saved or copied", (name) => {
    const table = aChart(name);
    for (const text of [writeCsv(csvCells(table)), copied(table)])
      expect(whyNoLaps(text)?.wrong).toContain("the table behind the chart of");
  });

  it("a backup, as a file or as text", async () => {
    const backup = await writeBackup(await theRows(), { title: "mine", schema: 1, sha256: undefined });
    for (const text of [backup, `\uFEFF${backup}`, writePasteText(new TextEncoder().encode(backup))])
      expect(whyNoLaps(text)?.wrong).toBe("This is a backup of a Lap Ledger logbook.");
  });

  it("and a driver's own tables are not", () => {
    for (const text of [
      "Day;Auto;Course;Time\n3.4.2026;club hatch;Varnholt Ring;1:24,9",
      "date,car,track,lap,lap time,seconds\n2026-04-03,club hatch,Varnholt Ring,1,1:24.9,84.9",
      "1:24.9\n1:25.3",
    ])
      expect(whyNoLaps(text)).toBeUndefined();
  });
});

describe("a table pasted where laps are typed", () => {
  it("gives no lap from a line that is none, and says that it is a table", async () => {
    const rows = await theRows();
    const tables = [lapsTable, ofSessions, targetsTable, rigsTable].flatMap((table) =>
      styles.map((style) => writeCsv(table(rows), style)),
    );
    const texts = [
      ...tables,
      ...charts.flatMap((name) => [writeCsv(csvCells(aChart(name))), copied(aChart(name))]),
    ];
    for (const text of texts)
      for (const { text: line, reading } of parsePaste(text, aContext()).lines)
        expect(reading.ok ? line : undefined).toBeUndefined();
    const [row] = parsePaste(writeCsv(targetsTable(rows)).split("\r\n")[1] ?? "", aContext()).lines;
    expect(row?.reading).toMatchObject({
      problem: { wrong: "This is a row of a table with several columns, not a lap alone." },
    });
  });
});
