import { expect, it } from "vitest";
import { type Figure, unknown } from "#domain";
import { type LapForAccount, sectorAccount, timeAccount } from "#stats";
import { workOn } from "../../../../src/stats/account/workOn.ts";

const paceLaps = (...times: number[]): LapForAccount[] =>
  times.map((ms) => ({ ms, remarks: [], pace: true }));
const off = (ms: number, isOdd = false): LapForAccount => ({
  ms,
  remarks: [{ kind: "off" }],
  pace: false,
  isOdd,
});

/** Five laps that lose most in the second sector. */
const sectors = sectorAccount([
  [30_000, 54_000],
  [30_010, 54_400],
  [30_020, 54_500],
  [30_000, 54_600],
  [30_010, 54_700],
]);
const none: Figure<never> = unknown({ because: "no target" });

it("names the largest line, with the sector in which most is lost", () => {
  const uneven = timeAccount([paceLaps(84_000, 84_500, 84_500, 84_500, 84_500)], 84_000);
  expect(workOn(uneven, sectors)).toEqual({ line: "repeatability", ms: 400, sector: 1, isOddAside: false });
  expect(workOn(uneven, none)).toEqual({
    line: "repeatability",
    ms: 400,
    sector: undefined,
    isOddAside: false,
  });
});

it("names no sector where mistakes cost most: they can happen anywhere", () => {
  const laps = [...paceLaps(84_000, 84_000, 84_000, 84_000, 84_000), off(90_000)];
  expect(workOn(timeAccount([laps], 84_000), sectors)).toEqual({
    line: "mistakes",
    ms: 1000,
    sector: undefined,
    isOddAside: false,
  });
});

it("says where a lap confirmed as far beyond the usual was left aside", () => {
  const laps = [...paceLaps(84_000, 84_500, 84_500, 84_500, 84_500), off(1_500_000, true)];
  expect(workOn(timeAccount([laps], 84_000), sectors)).toEqual({
    line: "repeatability",
    ms: 400,
    sector: 1,
    isOddAside: true,
  });
});

it("names nothing where nothing is lost or nothing is known", () => {
  const even = timeAccount([paceLaps(84_000, 84_000, 84_000, 84_000, 84_000)], 84_000);
  expect(workOn(even, sectors)).toBeUndefined();
  expect(workOn(none, sectors)).toBeUndefined();
});
