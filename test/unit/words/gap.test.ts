import { expect, it } from "vitest";
import { sayGap, sayGapAt } from "#words";

it("tells a gap in quarters of a car where it is near one, and always in metres", () => {
  const said = [0.45, 0.9, 1.35, 1.8, 2.25, 2.7, 3.6, 5.4].map((metres) => sayGap(metres, 1.8));
  expect(said).toEqual([
    "a quarter of a car (0.5 m)",
    "half a car (0.9 m)",
    "three quarters of a car (1.4 m)",
    "one car (1.8 m)",
    "one and a quarter cars (2.3 m)",
    "one and a half cars (2.7 m)",
    "two cars (3.6 m)",
    "three cars (5.4 m)",
  ]);
});

it("tells what is no quarter of a car, or too many of them, in metres alone", () => {
  expect([0.1, 0.65, 6.3].map((metres) => sayGap(metres, 1.8))).toEqual(["0.1 m", "0.7 m", "6.3 m"]);
  expect(sayGap(1, 2)).toBe("half a car (1.0 m)");
});

it("tells what was seen at an edge: something left, nothing, or over it", () => {
  expect([0.9, 0, -0.25].map((metres) => sayGapAt(metres, 1.8))).toEqual([
    "half a car (0.9 m) left",
    "nothing left",
    "0.3 m over the edge",
  ]);
});
