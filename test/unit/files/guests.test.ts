import { describe, expect, test } from "vitest";
import { readLaps, readTable } from "#files";

/** The guests of a table's rows; "the driver" where none drove. */
function guestsIn(text: string): readonly string[] {
  const read = readLaps(readTable(text, {}, { cars: [], tracks: [] }), {}, "2026-12-31");
  return [
    ...read.laps.map(({ settings }) => settings.guest ?? "the driver"),
    ...read.unread.map(({ wrong }) => wrong),
  ];
}
const table = (heads: string, rows: readonly string[]) =>
  [
    `date,car,track,lap time,${heads}`,
    ...rows.map((row) => `2026-10-14,club hatch,Varnholt Ring,1:23.456,${row}`),
    "",
  ].join("\n");

describe("a guest of a table", () => {
  test("whatever a column of names holds is a name", () => {
    const names = ["No", "no", "0", "1", "Yes", "yes", "n", "x", "false", "Ada"];
    const rows = names.map((name) => `yes,${name}`);
    expect(guestsIn(table("guest,guest name", [...rows, "yes,", ",", "no,"]))).toEqual([
      ...names,
      "",
      "the driver",
      "the driver",
    ]);
    expect(guestsIn(table("guest name", ["No", ""]))).toEqual(["No", "the driver"]);
  });

  test("is asked for where the row says both that one drove and that none did", () => {
    expect(guestsIn(table("guest,guest name", ["no,Ada"]))).toEqual([
      "The row names a guest, and says that no guest drove.",
    ]);
  });

  test("of the ledger's older tables is a name, but for the yes of a guest without one", () => {
    expect(guestsIn(table("not best,guest", [",No", ",0", ",n", ",Yes", ",yes", ",", ",Ada"]))).toEqual([
      "No",
      "0",
      "n",
      "Yes",
      "",
      "the driver",
      "Ada",
    ]);
  });

  test("of another table is a name where the cell is no answer", () => {
    const cells = ["yes", "no", "Y", "n", "1", "0", "x", "nein", "", "Ada"];
    expect(guestsIn(table("guest", cells))).toEqual([
      "",
      "the driver",
      "",
      "the driver",
      "",
      "the driver",
      "",
      "the driver",
      "the driver",
      "Ada",
    ]);
  });
});
