import { expect, test } from "vitest";
import { readTableDate, readTableTime } from "#files";
import { readClock } from "../../../src/files/tableClock.ts";
import { guessDateOrder } from "../../../src/files/tableDate.ts";
import { readRemarks, writeRemarks } from "../../../src/files/tableRemarks.ts";

const dateOf = (cell: string, order: "day" | "month" | "year" | undefined) => {
  const read = readTableDate(cell, order);
  if (!read.ok) return read.problem.wrong;
  const { date, clock, instant } = read;
  const at = clock ? ` ${clock.hour}:${clock.minute}:${clock.second}` : "";
  return `${date}${at}${instant === undefined ? "" : ` ${new Date(instant).toISOString()}`}`;
};

test.each([
  ["2026-10-14", undefined, "2026-10-14"],
  ["2026/10/14", "month", "2026-10-14"],
  ["20261014", undefined, "2026-10-14"],
  ["14.10.2026", "day", "2026-10-14"],
  ["14. 10. 2026", "day", "2026-10-14"],
  ["3/4/26", "day", "2026-04-03"],
  ["3/4/26", "month", "2026-03-04"],
  ["26-04-03", "year", "2026-04-03"],
  ["1/2/99", "day", "1999-02-01"],
  ["14 Oct 2026", undefined, "2026-10-14"],
  ["Wed 14 October 2026", undefined, "2026-10-14"],
  ["October 14, 2026", undefined, "2026-10-14"],
  ["2026-10-14 19:05", undefined, "2026-10-14 19:5:0"],
  ["2026-10-14T19:05:33.250", undefined, "2026-10-14 19:5:33"],
  ["10/14/2026 7:05 PM", "month", "2026-10-14 19:5:0"],
  ["2026-10-14T19:05:00Z", undefined, "2026-10-14 19:5:0 2026-10-14T19:05:00.000Z"],
  ["2026-10-14T19:05:00+0200", undefined, "2026-10-14 19:5:0 2026-10-14T17:05:00.000Z"],
  ["3/4/2026", undefined, "“3/4/2026” may have the day or the month in front."],
  ["13/13/2026", "day", "“13/13/2026” is no day, read with the day in front."],
  ["2026-02-29", undefined, "“2026-02-29” is no day, read with the year in front."],
  ["1900-01-01", undefined, "“1900-01-01” lies outside the years 1970 to 2199."],
  ["2026-10-14 25:00", undefined, "“25:00” is no time of day."],
  ["yesterday", "day", "“yesterday” is not a date this field reads."],
] as const)("the date %s with %s in front is %s", (cell, order, is) => {
  expect(dateOf(cell, order)).toBe(is);
});

test.each([
  [["3/4/2026", "14/4/2026"], "day"],
  [["3/4/2026", "4/14/2026"], "month"],
  [["3.4.2026"], "day"],
  [["2026-10-14", "14 Oct 2026"], "year"],
  [["26-10-14", "99-10-14"], "year"],
  [["3/4/2026", "5/6/2026"], undefined],
  [["13/4/2026", "4/13/2026"], undefined],
  [["14/10/26", "15/10/26"], "day"],
  [["26-10-14"], undefined],
] as const)("the order of %j is %s", (cells, order) => {
  expect(guessDateOrder(cells)).toBe(order);
});

test.each([
  ["19:05", "19:5:0"],
  ["19.05", "19:5:0"],
  ["19h05", "19:5:0"],
  ["7:05 pm", "19:5:0"],
  ["12:30 am", "0:30:0"],
  ["7 p.m.", "19:0:0"],
  ["24:00", undefined],
  ["19", undefined],
  ["13:00 pm", undefined],
])("the clock %s is %s", (cell, is) => {
  const read = readClock(cell);
  expect(read.ok ? Object.values(read.clock).join(":") : undefined).toBe(is);
});

const point = { decimal: ".", wholeNumbers: "seconds" } as const;
const comma = { decimal: ",", wholeNumbers: "seconds" } as const;
const milliseconds = { decimal: ".", wholeNumbers: "milliseconds" } as const;
test.each([
  ["1:23.456", point, "83456/3"],
  ["1:23,4", comma, "83400/1"],
  ["00:01:23.456", point, "83456/3"],
  ["1'23\"456", point, "83456/3"],
  ["83.456000", point, "83456/3"],
  ["83,4", comma, "83400/1"],
  ["1,234", comma, "1234/3"],
  ["83", point, "83000/0"],
  ["83456", milliseconds, "83456/3"],
  ["1,234", point, undefined],
  ["83.456", comma, undefined],
  ["83.4567", point, undefined],
  ["1.234,567", comma, undefined],
  ["1,234.567", point, undefined],
  ["83456", point, undefined],
  ["+0.6", point, undefined],
  ["-83.456", point, undefined],
  ["1:75.0", point, undefined],
  ["0", point, undefined],
  ["1e2", point, undefined],
  ["999999999999", milliseconds, undefined],
] as const)("the time %s is read as %s", (cell, form, is) => {
  const read = readTableTime(cell, form);
  expect(read.ok ? `${read.ms}/${read.decimals}` : undefined).toBe(is);
});

test.each([
  ["off@5; cut", "off@5; cut"],
  ["off, corner 5", "off@5"],
  ["f@5 c", "off@5; cut"],
  ["Slow zone / spin turn 3", "slow zone; spin@3"],
  ["out lap", "out lap"],
  ["o", "out lap"],
  ["off at 5", undefined],
  ["__proto__", undefined],
  ["off@0", undefined],
])("the remarks %s are %s", (cell, is) => {
  const read = readRemarks(cell);
  expect(read.ok ? writeRemarks(read.remarks) : undefined).toBe(is);
});
