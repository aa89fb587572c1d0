import { expect, test } from "vitest";
import { type ImportedSession, newPart, type SessionThere } from "../../../src/db/importedSession.ts";
import type { NewLap } from "../../../src/db/writes/laps.ts";

/** A time as it stands in a table: its milliseconds and how many decimals it shows; without either, no time. */
type Time = readonly [ms?: number, decimals?: number];

const lapOf = ([ms, decimals]: Time): { readonly lap: NewLap } => ({
  lap: {
    ...(ms !== undefined && { ms }),
    ...(decimals !== undefined && { decimals }),
    source: "imported",
    remarks: [],
  },
});
const settings = { kind: "pace", effort: "full", surface: "dry", note: "" } as const;
const table = (...runs: readonly (readonly Time[])[]): ImportedSession => ({
  id: "new",
  car: "Club hatch",
  track: "Varnholt Ring",
  layout: "",
  date: "2026-03-10",
  startedAt: 0,
  isTimeOfDayKnown: false,
  zone: "UTC",
  runs: runs.map((times) => ({ settings, laps: times.map(lapOf) })),
});
const there = (id: string, ...times: readonly Time[]): SessionThere => ({
  id,
  laps: times.map(([ms, decimals]) => ({
    ...(ms !== undefined && { ms }),
    ...(decimals !== undefined && { decimals }),
  })),
});
/** The times that are new, run by run, how many are known, and the session they belong to. */
const part = (session: ImportedSession, ...known: readonly SessionThere[]) => {
  const { runs, known: count, into } = newPart(session, known);
  return { runs: runs.map((laps) => laps.map(({ lap }) => lap.ms)), known: count, into };
};
const exact = (...ms: readonly number[]) => ms.map((time): Time => [time, 3]);

test("without a session there all laps are new", () => {
  expect(part(table(exact(83_456, 83_900)))).toEqual({ runs: [[83_456, 83_900]], known: 0, into: undefined });
});

test("laps that are there are known, and the others belong to their session, run by run", () => {
  const again = table(exact(83_456, 84_000), exact(83_900, 85_000));
  expect(part(again, there("a", ...exact(83_456, 83_900)))).toEqual({
    runs: [[84_000], [85_000]],
    known: 2,
    into: "a",
  });
});

test("a time is known as often as it stands there", () => {
  expect(part(table(exact(83_456, 83_456, 83_456)), there("a", ...exact(83_456, 83_456)))).toEqual({
    runs: [[83_456]],
    known: 2,
    into: "a",
  });
});

test("of two sessions that have some of the laps, the one of the first known lap takes the others", () => {
  const [a, b] = [there("a", ...exact(83_900)), there("b", ...exact(83_456))];
  expect(part(table(exact(84_000, 83_456, 83_900)), a, b)).toEqual({ runs: [[84_000]], known: 2, into: "b" });
});

test("a lap of which an older table shows less than it counts for is there too", () => {
  // 83.4 s was typed as 83.456 s.
  expect(part(table([[83_400, 1]]), there("a", [83_456, 1]))).toEqual({ runs: [[]], known: 1, into: "a" });
  expect(part(table([[83_456, 1]]), there("a", [83_400, 1]))).toEqual({ runs: [[]], known: 1, into: "a" });
});

test("two laps that count for more than they show, and differently, are two laps", () => {
  expect(part(table([[83_456, 1]]), there("a", [83_412, 1]))).toEqual({
    runs: [[83_456]],
    known: 0,
    into: undefined,
  });
});

test("laps shown with other decimals are other laps", () => {
  expect(part(table([[83_400, 1]]), there("a", [83_456, 2]))).toMatchObject({ known: 0 });
});

test("the very same time is found before one that is only shown alike", () => {
  // Were 83.4 s of the table taken for 83.456 s first, the other one would be new.
  expect(
    part(
      table([
        [83_400, 1],
        [83_456, 1],
      ]),
      there("a", [83_456, 1], [83_400, 1]),
    ),
  ).toEqual({
    runs: [[]],
    known: 2,
    into: "a",
  });
  expect(
    part(
      table([
        [83_400, 1],
        [83_456, 1],
      ]),
      there("a", [83_456, 1]),
    ),
  ).toEqual({
    runs: [[83_400]],
    known: 1,
    into: "a",
  });
});

test("a time without its decimals is known to the thousandth", () => {
  expect(part(table([[83_456]]), there("a", [83_456]))).toMatchObject({ known: 1 });
  expect(part(table([[83_456]]), there("a", [83_456, 3]))).toMatchObject({ known: 1 });
  expect(part(table([[83_456]]), there("a", [83_457]))).toMatchObject({ known: 0 });
});

test("a lap without a time is known only beside a timed one, or in a session that has none", () => {
  const untimed: Time = [];
  expect(part(table([untimed, [83_456, 3]]), there("a", untimed, [83_456, 3]))).toMatchObject({ known: 2 });
  expect(part(table([untimed, [83_456, 3]]), there("a", untimed, [84_000, 3]))).toEqual({
    runs: [[undefined, 83_456]],
    known: 0,
    into: undefined,
  });
  expect(part(table([untimed, untimed]), there("a", untimed))).toEqual({
    runs: [[undefined]],
    known: 1,
    into: "a",
  });
});

test("a lap without a time is no lap of a time", () => {
  expect(part(table([[83_456, 3]]), there("a", []))).toMatchObject({ known: 0 });
  expect(part(table([[]]), there("a", [83_456, 3]))).toMatchObject({ known: 0 });
});
