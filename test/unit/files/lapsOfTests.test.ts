import { expect, test } from "vitest";
import { lapsTable, readLaps, readTable, writeCsv } from "#files";
import { rows } from "../demo-data/theDemo.ts";

const tested = rows.runs.filter(({ rigTest }) => rigTest !== undefined);

test("laps of a rig test say so in the table, with the setting they were driven with; others leave it empty", () => {
  const [head = [], ...table] = lapsTable(rows);
  const at = ["test pair", "test side", "test setting", "test void"].map((name) => head.indexOf(name));
  const [plan] = rows.rigTests;
  const told = table.filter((row) => row[head.indexOf("rig test")] !== "");
  expect(told).toHaveLength(tested.reduce((sum, { laps }) => sum + laps.length, 0));
  const places = new Set(told.map((row) => at.map((column) => row[column]).join("|")));
  expect(places).toContain(`1|A|${plan?.sayA}|`);
  expect(places).toContain(`1|B|${plan?.sayB}|`);
});

test("the table is read again as before: its columns of a test mean nothing else", () => {
  const table = lapsTable(rows);
  const { laps, unread } = readLaps(
    readTable(writeCsv(table), {}, { cars: [], tracks: [] }),
    {},
    "2026-11-25",
  );
  expect(unread).toEqual([]);
  expect(laps).toHaveLength(table.length - 1);
});
