import { expect, it } from "vitest";
import type { GapScale } from "#domain";
import { writeGaps } from "#entry";

const inCars: GapScale = { unit: "cars", carWidth: 1.8 };

it.each([
  [{}, ""],
  [{ entry: 0.9, apex: 0, exit: -0.2, braking: "late" }, "h . -0.2m bl"],
  [{ entry: -0.9, exit: 0.45 }, "-h ? 0.25"],
  [{ apex: 0.54 }, "? 0.3"],
  [{ exit: 1 }, "? ? 1m"],
  [{ entry: 0.225, apex: 0.1125 }, "0.125 0.1125m"],
  [{ throttle: "twice", isOffLine: true, note: "two lifts" }, "tt o / two lifts"],
  [{ note: "two lifts" }, "/ two lifts"],
] as const)("a corner's line is as short as the driver would type it: %j", (seen, text) => {
  expect(writeGaps(seen, inCars)).toBe(text);
});

it("in metres, half a car is still h, and figures stand without a unit", () => {
  const seen = { entry: 0.9, apex: 0.25, exit: 0.0000001 };
  expect(writeGaps(seen, { unit: "metres", carWidth: 1.8 })).toBe("h 0.25 0.0000001");
});
