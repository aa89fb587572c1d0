import { expect, test } from "vitest";
import type { RigSettings, RigTest } from "#domain";
import { nameOfReturn, saidOfTest } from "../../../../src/screens/rig/rigWords.ts";

const rig = (id: string, wheel: RigSettings["wheel"], more: Partial<RigSettings> = {}) =>
  ({
    id,
    from: "2026-08-31",
    name: "",
    screen: {},
    view: {},
    wheel,
    pedals: {},
    seat: {},
    ...more,
  }) as RigSettings;
const tested = (fields: Partial<RigTest>) => ({ question: "does it help?", ...fields }) as RigTest;

test("a record that goes back is named after the one it goes back to, once", () => {
  expect(nameOfReturn({ name: "As it was", from: "2026-08-31" })).toBe("Back to As it was");
  expect(nameOfReturn({ name: "Back to As it was", from: "2026-08-31" })).toBe("Back to As it was");
  expect(nameOfReturn({ name: "", from: "2026-08-31" })).toBe("Back to the settings of Mon 31 Aug 2026");
  expect(nameOfReturn({ name: "x".repeat(400), from: "2026-08-31" })).toHaveLength(400);
});

test("a test is told by what it compared, what both have in common once", () => {
  expect(saidOfTest(tested({ sayA: "gain 72 %", sayB: "gain 54 %" }), [])).toBe("gain 54 % against 72 %");
  expect(saidOfTest(tested({ sayA: "spring pedals", sayB: "load cell" }), [])).toBe(
    "load cell against spring pedals",
  );
  expect(saidOfTest(tested({ sayA: "gain", sayB: "gain" }), [])).toBe("gain against gain");
});

test("an old test is told by the one value in which its records differ, else by its question", () => {
  const a = rig("a", { gainPercent: 72 });
  const b = rig("b", { gainPercent: 54, note: "less of it" });
  const old = tested({ rigA: "a", rigB: "b" });
  expect(saidOfTest(old, [a, b])).toBe("gain 54 % against 72 %");
  expect(saidOfTest(old, [a, rig("b", { gainPercent: 54, damping: 3 })])).toBe("does it help?");
  expect(saidOfTest(old, [a])).toBe("does it help?");
  expect(saidOfTest(old, [rig("a", {}), b])).toBe("does it help?");
});
