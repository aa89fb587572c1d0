import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import { planTest } from "#stats";
import { askTest, sayFoundBy, sayNotWorth, sayTestSize, sayWhySoMany } from "#words";

const combo = "Varnholt Ring · club hatch";

test("the question of a test is made of what differs", () => {
  const gain = { sayA: "gain 72 %", sayB: "gain 54 %", differs: "value" } as const;
  expect(askTest({ ...gain, figure: "usual" }, combo)).toBe(
    "Does gain 54 % instead of gain 72 % make me faster? Varnholt Ring · club hatch",
  );
  const gloves = { sayA: "without", sayB: "with gloves", differs: "words" } as const;
  expect(askTest({ ...gloves, figure: "scatter" }, combo)).toBe(
    "With gloves or without: which is steadier? Varnholt Ring · club hatch",
  );
});

test("the size of a test is told as runs and evenings", () => {
  const size = { pairs: 8, runs: 16, laps: 96, evenings: 4 };
  expect(sayTestSize(size, 6)).toBe("8 pairs of runs: 16 runs of 6 laps, about 4 evenings");
  expect(sayFoundBy({ ...size, foundMs: 184 })).toMatch(/^In 4 such tests of 5 .* 0\.18 s is found/);
  expect(sayFoundBy(size)).toBe("");
});

test("the reason is the driver's own runs, or what is missing of them", () => {
  expect(sayWhySoMany(known({ ms: 304, differences: 12 }), "usual")).toMatch(
    /usual lap differs by about 0\.30 s/,
  );
  expect(sayWhySoMany(unknown({ needs: 5, of: "pair of neighbouring runs", has: 2 }), "usual")).toMatch(
    /2 of 5/,
  );
});

test("a test that is not worth driving says what the largest one would find", () => {
  const asked = { spread: 300, lapsARun: 6, runsAnEvening: 4 };
  const plan = planTest({ ...asked, smallestMs: 40 });
  expect(sayNotWorth(plan, 40)).toMatch(
    /^Not worth testing: a difference of 0\.04 s takes \d{3} pairs, and more than 24 are too many to drive for one setting\. With \d+ pairs, \d+ evenings, you would find 0\.\d\d s\.$/,
  );
  expect(sayNotWorth(planTest({ ...asked, smallestMs: 300 }), 300)).toBe("");
});
