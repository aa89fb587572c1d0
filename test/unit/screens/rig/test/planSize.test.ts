import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import type { TestBasis } from "#stats";
import { planSize } from "../../../../../src/screens/rig/test/planSize.ts";

const none = unknown({ needs: 5, of: "pair of neighbouring runs", has: 1 });
const basis = (spread: TestBasis["spread"]["usual"]): TestBasis => ({
  usualMs: known(84_000),
  spread: { usual: spread, scatter: none },
  worthwhile: { usual: known(90), scatter: none },
  runsAnEvening: 4,
  lapsARun: 8,
});
const effort = (smallest: number, pairs?: number) => ({
  smallest: { value: smallest },
  laps: { value: 6 },
  pairs: pairs === undefined ? undefined : { value: pairs },
});

test("as many pairs are offered as the driver's own runs ask for", () => {
  const found = planSize(basis(known({ ms: 200, differences: 12 })), "usual", effort(0.2));
  expect(found.offered).toBe(found.plan?.pairs);
  expect(found.size).toMatchObject({ pairs: found.offered, runs: 2 * found.offered });
  expect(found.spreadMs).toBe(200);
});

test("where a test is not worth it the largest that is stands there, and the driver may still choose", () => {
  const hard = basis(known({ ms: 300, differences: 12 }));
  const found = planSize(hard, "usual", effort(0.03));
  expect(found.plan?.verdict.isWorth).toBe(false);
  expect(found.offered).toBeLessThan(found.plan?.pairs ?? 0);
  expect(planSize(hard, "usual", effort(0.03, 9)).size?.pairs).toBe(9);
});

test("without runs in a row eight pairs are offered, and nothing is said of what they find", () => {
  const found = planSize(basis(none), "usual", effort(0.2));
  expect(found.offered).toBe(8);
  expect(found.plan).toBeUndefined();
  expect(found.size).toMatchObject({ pairs: 8, runs: 16, evenings: 4 });
  expect(found.size).not.toHaveProperty("foundMs");
});
