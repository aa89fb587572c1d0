import { expect, it } from "vitest";
import { sayCornerKind } from "#words";

it.each([
  [{}, ""],
  [{ bend: "slow", after: "long" }, "slow, then a long straight"],
  [{ after: "none" }, "then the next corner at once"],
  [{ bend: "hairpin" }, "hairpin"],
] as const)("the kind of a corner is told: %j", (corner, said) => {
  expect(sayCornerKind(corner)).toBe(said);
});
