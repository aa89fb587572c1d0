import { expect, it } from "vitest";
import type { GapScale } from "#domain";
import { sayGap, sayGapHere, saySeenCorner } from "#words";

const inCars: GapScale = { unit: "cars", carWidth: 1.8 };
const inMetres: GapScale = { unit: "metres", carWidth: 1.8 };

it.each([
  [0.45, "a quarter of a car left at entry (0.45 m)"],
  [0.9, "half a car left at entry (0.9 m)"],
  [1.35, "three quarters of a car left at entry (1.35 m)"],
  [1.8, "a whole car left at entry (1.8 m)"],
  [2.7, "one and a half cars left at entry (2.7 m)"],
  [3.6, "2 cars left at entry (3.6 m)"],
  [4.05, "2 and a quarter cars left at entry (4.05 m)"],
  [1, "0.6 of a car left at entry (1 m)"],
  [2, "1.1 cars left at entry (2 m)"],
  [0.05, "less than 0.1 of a car left at entry (0.05 m)"],
  [0, "nothing left at entry"],
  [-0.9, "half a car over the edge at entry (0.9 m)"],
])("a gap of %s m is told in cars first", (metres, said) => {
  expect(sayGap("entry", metres, inCars)).toBe(said);
});

it("a gap is told in metres first where they are typed", () => {
  expect(sayGap("exit", -0.2, inMetres)).toBe("0.2 m over the edge at exit (0.1 of a car)");
  expect(sayGap("apex", 0.001, inMetres)).toBe("less than 0.01 m left at the apex (less than 0.1 of a car)");
});

it("a gap whose place is said already is told without it", () => {
  expect(sayGapHere(0.9, inCars)).toBe("half a car left (0.9 m)");
  expect(sayGapHere(-0.2, inMetres)).toBe("0.2 m over the edge (0.1 of a car)");
  expect(sayGapHere(0, inCars)).toBe("nothing left");
});

it("what was seen at a corner stands in one line, and what was not is named among the gaps", () => {
  const seen = {
    entry: 0.9,
    exit: 0,
    braking: "late",
    throttle: "twice",
    isOffLine: true,
    note: "lifted",
  } as const;
  expect(saySeenCorner(seen, inCars)).toBe(
    "half a car left at entry (0.9 m), apex not seen, nothing left at exit · braking late · throttle twice · off line · lifted",
  );
  expect(saySeenCorner({ braking: "early" }, inCars)).toBe("braking early");
  expect(saySeenCorner({}, inCars)).toBe("");
});
