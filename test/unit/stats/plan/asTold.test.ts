import { expect, test } from "vitest";
import { checkAsTold } from "#stats";
import { sayGoodWhen } from "#words";

test("a run is judged by what is told of it, rounded up and never under the lap it was taken from", () => {
  expect(checkAsTold("usual", 56_237)).toEqual({ figure: "usual", value: 56_240 });
  expect(sayGoodWhen({ check: checkAsTold("usual", 56_237) })).toBe("usual lap 56.24 or under");
  expect(checkAsTold("usual", 56_240).value).toBe(56_240);
  expect(checkAsTold("scatter", 181.2).value).toBe(190);
  expect(checkAsTold("sector", 31_000.5).value).toBe(31_001);
  expect(checkAsTold("best", 83_300).value).toBe(83_300);
});
