import { expect, test } from "vitest";
import { sayPlanSize } from "#words";

const plain = (text: string) => text.replaceAll("\u00a0", " ");
const lines = [3, 8, 8].map((laps) => ({ purpose: "Laps", laps }));

test("a plan's size is told in runs, laps and minutes, two of them between two runs", () => {
  // 19 laps of 90 s are 28.5 min, and 4 min between the runs.
  expect(plain(sayPlanSize(lines, { lapMs: 90_000 }))).toBe("3 runs, 19 laps, about 33 min");
  expect(sayPlanSize([{ purpose: "Laps" }], { lapMs: undefined })).toBe("1 run, 0 laps");
});

test("more than there is time for is said, but not for a few minutes", () => {
  const said = (minutes: number) => plain(sayPlanSize(lines, { lapMs: 90_000, minutes }));
  expect(said(28)).toBe("3 runs, 19 laps, about 33 min");
  expect(said(27)).toBe("3 runs, 19 laps, about 33 min: more than the 27 min you have");
});
