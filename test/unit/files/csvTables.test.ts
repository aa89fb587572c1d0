import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type KnownNames, readLaps, readTable, readText, type TableForm } from "#files";

const known: KnownNames = { cars: [], tracks: [] };

async function tableIn(file: string, said: Partial<TableForm> = {}, names = known) {
  const bytes = Uint8Array.from(readFileSync(`test/fixtures/tables/${file}`));
  const text = await readText(new Blob([bytes]), { mayBeOld: true });
  if (!text.ok) throw new Error(text.problem.wrong);
  const table = readTable(text.text, said, names);
  const { laps, unread } = readLaps(table, {}, "2026-11-25");
  return {
    ...text,
    table,
    laps: laps.map(
      ({ line, date, car, track, lap }) => `${line} ${date} ${car} ${track} ${lap.ms}/${lap.decimals}`,
    ),
    rows: laps,
    unread: unread.map(({ line, wrong }) => `${line} ${wrong}`),
  };
}

const first = "2 2026-10-14 club hatch Varnholt Ring 83456/3";
const accented = "2 2026-10-14 club hatch Märlow Fén 83456/3";

test("a plain table is read row by row, decimals kept", async () => {
  const { laps, unread, table } = await tableIn("plain.csv");
  expect(laps).toEqual([
    first,
    "3 2026-10-14 club hatch Varnholt Ring 83900/1",
    "4 2026-10-21 club hatch Varnholt Ring 83200/1",
  ]);
  expect(unread).toEqual([]);
  expect(table.form).toMatchObject({ delimiter: ",", hasHeader: true, decimal: ".", dateOrder: "year" });
});

test.each([
  ["mark.csv", "UTF-8", ",", accented],
  ["utf16le.csv", "UTF-16", "\t", accented],
  ["utf16be-no-mark.csv", "UTF-16", ";", first],
  ["windows-1252.csv", "Windows-1252", ";", accented],
])("%s is read as %s", async (file, encoding, delimiter, lap) => {
  const read = await tableIn(file);
  expect(read.encoding).toBe(encoding);
  expect(read.broken).toBe(0);
  expect(read.table.form.delimiter).toBe(delimiter);
  expect(read.laps).toEqual([lap]);
  expect(read.unread).toEqual([]);
});

test("with a decimal comma 1,234 is a little over a second, never 1234", async () => {
  const { table, laps, rows } = await tableIn("semicolon-decimal-comma.csv");
  expect(table.form).toMatchObject({ delimiter: ";", decimal: ",", dateOrder: "day" });
  expect(laps).toEqual([
    first,
    "3 2026-10-15 club hatch Varnholt Ring 83900/1",
    "4 2026-10-16 club hatch Varnholt Ring 1234/3",
  ]);
  expect(rows[0]?.settings.fuelLitres).toBeUndefined();
  const withFuel = await tableIn("semicolon-decimal-comma.csv", {
    columns: ["date", "car", "track", "time", "fuel"],
  });
  expect(withFuel.rows.map(({ settings }) => settings.fuelLitres)).toEqual([12.5, 12, 11]);
});

test("with a decimal point 1,234 is refused, with its line and the reason", async () => {
  const { laps, unread } = await tableIn("decimal-point-comma-cell.csv");
  expect(laps).toHaveLength(2);
  expect(unread).toEqual(["3 “1,234” has a comma, and the decimal sign of this table is the point."]);
});

test("broken bytes are counted, and the rows around them are read", async () => {
  const { encoding, broken, laps } = await tableIn("broken-bytes.csv");
  expect([encoding, broken]).toEqual(["UTF-8", 2]);
  expect(laps).toHaveLength(2);
});

test("of ragged rows the ones with a cell too many are refused, empty cells too many do no harm", async () => {
  const { laps, unread } = await tableIn("ragged.csv");
  expect(laps).toEqual([first, "4 2026-10-14 club hatch Varnholt Ring 83600/1"]);
  expect(unread).toEqual(["3 The row has 6 cells, the table has 5 columns.", "6 The track is missing."]);
});

test("quoted line ends and doubled quotes belong to their cell, and the lines behind are still counted", async () => {
  const { rows, unread } = await tableIn("quoted-lines.csv");
  expect(rows.map(({ line, lap }) => [line, lap.note])).toEqual([
    [2, "two\r\nlines"],
    [4, 'said "slow"'],
  ]);
  expect(unread[0]).toMatch(/^5 /);
});

test("a quote that is never closed is said, and swallows nothing silently", async () => {
  const { laps, unread } = await tableIn("open-quote.csv");
  expect(laps).toEqual([first]);
  expect(unread).toEqual(["3 A quote opens a cell here and is never closed."]);
});

test("without a head, columns are known by their cells and by names that are there", async () => {
  const names = { cars: ["Club Hatch"], tracks: ["Varnholt Ring"] };
  const { table, laps } = await tableIn("no-head.csv", {}, names);
  expect(table.form.hasHeader).toBe(false);
  expect(table.form.columns).toEqual(["date", "car", "track", "time"]);
  expect(laps[0]).toBe("1 2026-10-14 club hatch Varnholt Ring 83456/3");
  expect((await tableIn("no-head.csv")).table.form.columns).toEqual(["date", "none", "none", "time"]);
});

test("a head that stands twice gives the first column its kind and leaves the second to the driver", async () => {
  const { table, laps } = await tableIn("doubled-head.csv");
  expect(table.form.columns).toEqual(["time", "date", "none", "car", "track"]);
  expect(laps).toEqual([first]);
});

test("columns may stand in any order, sectors too", async () => {
  const { rows } = await tableIn("other-order.csv");
  expect(rows[0]).toMatchObject({ lap: { ms: 83420, decimals: 2, sectors: [27100, 31420, 24900] } });
});

test("dates with the month in front are known by a day above 12", async () => {
  const { table, laps } = await tableIn("month-first.csv");
  expect(table.form.dateOrder).toBe("month");
  expect(laps.map((lap) => lap.slice(0, 12))).toEqual(["2 2026-03-04", "3 2026-10-14"]);
});

test("dates that may be read both ways are not guessed", async () => {
  const { table, laps, unread } = await tableIn("unclear-dates.csv");
  expect(table.form.dateOrder).toBeUndefined();
  expect(laps).toEqual([]);
  expect(unread[0]).toBe("2 “3/4/2026” may have the day or the month in front.");
  const said = await tableIn("unclear-dates.csv", { dateOrder: "day" });
  expect(said.laps.map((lap) => lap.slice(0, 12))).toEqual(["2 2026-04-03", "3 2026-06-05"]);
});

test("whole milliseconds are found", async () => {
  const { table, laps } = await tableIn("milliseconds.csv");
  expect(table.form.wholeNumbers).toBe("milliseconds");
  expect(laps[0]).toBe(first);
  const asSeconds = await tableIn("milliseconds.csv", { wholeNumbers: "seconds" });
  expect(asSeconds.unread[0]).toBe("2 “83456” has no decimal sign.");
});

test("a title above the head, blanks around cells and empty rows do no harm", async () => {
  const { laps, unread } = await tableIn("title-and-blanks.csv");
  expect(laps).toEqual(["4 2026-10-14 club hatch Varnholt Ring 83456/3"]);
  expect(unread).toEqual([]);
});

test("line ends of three kinds in one file all end a row", async () => {
  const { laps } = await tableIn("mixed-line-ends.csv");
  expect(laps.map((lap) => lap.split(" ")[0])).toEqual(["2", "3", "4"]);
});

test("signs in texts do not outvote the one that cuts the head into names", () => {
  const note = '"wide\t; so\t; again"';
  const row = `2026-10-14,club hatch,Varnholt Ring,1:23.456,${note}`;
  const table = readTable(`date,car,track,lap time,note\n${row}\n${row}\n`, {}, { cars: [], tracks: [] });
  expect(table.form.delimiter).toBe(",");
  expect(table.rows[0]?.cells).toHaveLength(5);
});
