import { expect, test } from "vitest";
import { readLaps, readTable, writeCsv } from "#files";

const today = "2026-11-25";
const head = "date,car,track,lap time\n";
const row = (time: string) => `2026-10-14,club hatch,Varnholt Ring,${time}`;
const whole = `${head}${row("1:23.456")}\n${row("1:23.900")}\n${row("1:12.345")}`;

const read = (text: string) => {
  const { laps, unread, mayBeCut } = readLaps(readTable(text, {}, { cars: [], tracks: [] }), {}, today);
  return {
    times: laps.map(({ lap }) => lap.ms),
    unread: unread.map(({ line, wrong }) => `${line} ${wrong}`),
    mayBeCut,
  };
};
const twoLaps = [83_456, 83_900];

test("a table that breaks off within the last lap time never has that time read without a word", () => {
  for (let length = whole.length - "1:12.345".length + 1; length < whole.length; length += 1) {
    const text = whole.slice(0, length);
    const { times, unread, mayBeCut } = read(text);
    const said = mayBeCut || unread.some((line) => line.startsWith("4 "));
    expect(said, JSON.stringify(text.slice(-9))).toBe(true);
    expect(times.slice(0, 2)).toEqual(twoLaps);
    expect(times.every((ms = 0) => ms > 60_000)).toBe(true);
  }
});

test("a last lap of 1 s in a line without an end is refused with what was seen", () => {
  expect(read(whole.slice(0, -":12.345".length))).toEqual({
    times: twoLaps,
    unread: ["4 The table breaks off here, in “1”."],
    mayBeCut: false,
  });
});

test("a whole table is whole, with and without its last line end, however short its last cell is", () => {
  for (const text of [
    whole,
    `${whole}\n`,
    `${whole}\r\n`,
    `${head}${row("10:03.456")}\n${row("9:58.123")}`,
    `${head}${row("83.4")}\n${row("83.456")}\n${row("83.9")}`,
    `${head}${row("100")}\n${row("99")}`,
    `${head}${row("1:23.456")}\n${row("no time")}`,
    `${head}${row("1:23.456")}`,
  ])
    expect(read(text), text).toMatchObject({ unread: [], mayBeCut: false });
});

test("what stands in a line with an end is read as it stands", () => {
  expect(read(`${whole.slice(0, -2)}\n`)).toEqual({
    times: [...twoLaps, 72_300],
    unread: [],
    mayBeCut: false,
  });
});

test("a last sector or date that breaks off is refused too", () => {
  const sectors = "date,car,track,sector 1,sector 2\n2026-10-14,a,b,41.100,42.356\n2026-10-14,a,b,41.200,4";
  expect(read(sectors).unread).toEqual(["3 The table breaks off here, in “4”."]);
  const dates =
    "car,track,lap time,date\na,b,1:23.456,2026-10-14\na,b,1:23.900,2026-10-15\na,b,1:23.700,2026-10-1";
  expect(read(dates)).toMatchObject({
    times: twoLaps,
    unread: ["4 The table breaks off here, in “2026-10-1”."],
  });
});

test("a last line with fewer cells than all the others is pointed at", () => {
  const notes = `date,car,track,lap time,note\n${row("1:23.456")},late\n${row("1:23.900")},\n`;
  expect(read(`${notes}${row("1:12.345")}`)).toEqual({
    times: [...twoLaps, 72_345],
    unread: [],
    mayBeCut: true,
  });
  expect(read(`${notes}${row("1")}`)).toMatchObject({ times: twoLaps, mayBeCut: false });
});

test("the app's own tables end in a line end", () => {
  const style = { delimiter: ",", decimal: "." } as const;
  expect(writeCsv([["lap"], ["1:23.456"]], style)).toMatch(/\r\n$/);
});
