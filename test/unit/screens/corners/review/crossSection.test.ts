import { expect, test } from "vitest";
import { crossSection, stepsOf } from "../../../../../src/screens/corners/review/crossSection.ts";

test.each([
  ["right", "left", "right", "left"],
  ["left", "right", "left", "right"],
  [undefined, "left", "right", "left"],
] as const)(
  "of a corner that turns %s, entry and exit are judged at the outer edge, the apex at the inner one",
  (direction, ...sides) => {
    const corner = { width: 12, ...(direction && { direction }) };
    expect(
      (["entry", "apex", "exit"] as const).map((place) => crossSection(place, corner, 1.8).from),
    ).toEqual(sides);
  },
);

test("a kerb that may be used widens the road at its place only, and a width nobody measured is assumed", () => {
  const corner = { width: 12, kerbs: { apex: 0.5 } };
  expect(crossSection("apex", corner, 1.8)).toMatchObject({ width: 12.5, kerb: 0.5, isAssumed: false });
  expect(crossSection("exit", corner, 1.8)).toMatchObject({ width: 12, kerb: 0, isAssumed: false });
  expect(crossSection("exit", {}, 1.8)).toMatchObject({ width: 11, isAssumed: true });
});

test("the car goes in quarters of its width from a whole car over the edge to the other edge", () => {
  expect(stepsOf(crossSection("entry", { width: 9 }, 1.8))).toEqual({ least: -4, most: 16 });
  expect(stepsOf(crossSection("entry", { width: 2 }, 1.8))).toEqual({ least: -4, most: 2 });
});
