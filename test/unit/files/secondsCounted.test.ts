import { describe, expect, test } from "vitest";
import { readLaps, readTable } from "#files";

describe("the seconds a lap counts as", () => {
  const timesIn = (rows: readonly string[]) => {
    const text = `date,car,track,lap time,seconds counted\n${rows.map((row) => `2026-10-14,club hatch,Varnholt Ring,${row}\n`).join("")}`;
    const read = readLaps(readTable(text, {}, { cars: [], tracks: [] }), {}, "2026-12-31");
    return [...read.laps.map(({ lap }) => [lap.ms, lap.decimals]), ...read.unread.map(({ wrong }) => wrong)];
  };

  test("say all digits of its time", () => {
    expect(timesIn(["1:23.4,83.42", "1:24,84.55", "1:23.456,83.456", "1:23.4,", "20:00,1200.5"])).toEqual([
      [83_420, 1],
      [84_550, 0],
      [83_456, 3],
      [83_400, 1],
      [1_200_500, 0],
    ]);
  });

  test("are refused where the lap time is another, as one that was changed in a spreadsheet", () => {
    expect(timesIn(["1:23.9,83.42"])).toEqual([
      "The lap time “1:23.9” and the seconds it counts as, “83.42”, are not the same time.",
    ]);
  });

  test("stand for the lap time where its column was taken out", () => {
    const text = "date,car,track,seconds counted\n2026-10-14,club hatch,Varnholt Ring,83.42\n";
    const read = readLaps(readTable(text, {}, { cars: [], tracks: [] }), {}, "2026-12-31");
    expect(read.laps[0]?.lap).toMatchObject({ ms: 83_420, decimals: 2 });
  });
});
