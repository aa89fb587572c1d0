import fc from "fast-check";
import { expect, test } from "vitest";
import { type Corner, fillCorners } from "#domain";

test("corners that are missing come in at their place in the lap, and what is known already stays", () => {
  const known: Corner[] = [
    { number: 2, name: "Mill", radius: 40 },
    { number: 5, kerbs: { exit: 1 } },
  ];
  const other: Corner[] = [
    { number: 1, direction: "left" },
    { number: 2, name: "Church", bend: "slow" },
    { number: 5, kerbs: { exit: 2, apex: 0.5 } },
    { number: 7 },
  ];
  expect(fillCorners(known, other)).toEqual([
    { number: 1, direction: "left" },
    { number: 2, name: "Mill", radius: 40, bend: "slow" },
    { number: 5, kerbs: { exit: 1, apex: 0.5 } },
    { number: 7 },
  ]);
});

test("a straight's length from elsewhere never contradicts the straight that is named here", () => {
  const far: Corner = { number: 1, after: "long", afterLength: 600 };
  expect(fillCorners([{ number: 1, after: "none" }], [far])).toEqual([{ number: 1, after: "none" }]);
  expect(fillCorners([{ number: 1, afterLength: 90 }], [far])).toEqual([{ number: 1, afterLength: 90 }]);
  expect(fillCorners([{ number: 1 }], [far])).toEqual([far]);
});

test("nothing that is known is ever lost, and filling twice is filling once", () => {
  const corner = fc.record(
    {
      number: fc.integer({ min: 1, max: 6 }),
      name: fc.constantFrom("Mill", "Church"),
      direction: fc.constantFrom("left" as const, "right" as const),
      after: fc.constantFrom("none" as const, "long" as const),
      radius: fc.integer({ min: 1, max: 9 }),
    },
    { requiredKeys: ["number"] },
  );
  const corners = fc.uniqueArray(corner, { selector: ({ number }) => number });
  fc.assert(
    fc.property(corners, corners, (known, other) => {
      const filled = fillCorners(known, other);
      for (const one of known) expect(filled.find(({ number }) => number === one.number)).toMatchObject(one);
      for (const { number } of other) expect(filled.map((one) => one.number)).toContain(number);
      expect(fillCorners(filled, other)).toEqual(filled);
    }),
  );
});
