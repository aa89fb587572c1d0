import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import { type RigStep, weightiestStep } from "#stats";

const side = (sessions: number) => ({
  sessions: Array.from({ length: sessions }, (_, index) => ({
    sessionId: `s${index}`,
    date: "2026-11-01",
    usual: { ms: 90_000, decimals: 3 },
  })),
  usual: { ms: 90_000, decimals: 3 },
});
const step = (comboId: string, before: number, after: number, isKnown = true): RigStep => ({
  comboId,
  before: side(before),
  after: side(after),
  neither: [],
  step: isKnown
    ? known({ estimate: -900, low: -1000, high: -800, isQuestioned: false })
    : unknown({ needs: 2, of: "session", has: 0 }),
});

test("the combo with the most sessions on its poorer side answers, whatever came out", () => {
  const steps = [step("many before", 9, 2), step("even", 4, 3), step("few", 1, 1)];
  expect(weightiestStep(steps)?.comboId).toBe("even");
});

test("one that can tell comes before one that cannot, and of equals the first", () => {
  expect(weightiestStep([step("silent", 9, 9, false), step("tells", 2, 2)])?.comboId).toBe("tells");
  expect(weightiestStep([step("one", 3, 3), step("other", 3, 3)])?.comboId).toBe("one");
  expect(weightiestStep([])).toBeUndefined();
});

test("a side without sessions weighs nothing", () => {
  const { before: _, ...half } = step("half", 0, 9);
  expect(weightiestStep([{ ...half, before: undefined }, step("whole", 2, 2)])?.comboId).toBe("whole");
});
