import { expect, test } from "vitest";
import type { TestProgress } from "#stats";
import {
  sayBegunAnew,
  sayNextTestRun,
  sayPairMark,
  sayPairsDriven,
  sayRunOfTest,
  sayStopEarly,
  sayTestPlace,
  sayTestRun,
  sayTestRunInShort,
  sayWhyAside,
} from "#words";

const sides = { sayA: "gain 72 %", sayB: "gain 54 %" };
const progress = (more: Partial<TestProgress> = {}): TestProgress => ({
  pairs: [],
  complete: 2,
  planned: 8,
  voided: [],
  inHand: undefined,
  next: { pair: 3, side: "B", isFirst: true },
  isOver: false,
  ...more,
});
const driven = { runId: "r", sessionId: "s", n: 4, laps: 6 };

test("the next run is said with its pair and its setting", () => {
  expect(sayNextTestRun(progress(), sides)).toBe("Rig test: pair 3 of 8. Next run: B, gain 54 %.");
  expect(sayNextTestRun(progress({ next: undefined }), sides)).toBe("Rig test: every pair is driven.");
});

test("a run of a test counts its laps towards those planned", () => {
  expect(sayTestRun("B", sides, 4, 6)).toBe("Run with B, gain 54 %: 4 of 6 laps");
  expect(sayTestRun("A", sides, 0, 1)).toBe("Run with A, gain 72 %: 0 of 1 lap");
  expect(sayTestRunInShort("B", sides, 4, 6)).toBe("B, gain 54 %: 4 of 6");
});

test("a run among others says its place in the test, and why it is void", () => {
  expect(sayTestPlace({ pair: 3, side: "B" })).toBe("rig test, pair 3, B");
  expect(sayTestPlace({ pair: 3, side: "A", void: "interrupted" })).toBe(
    "rig test, pair 3, A, void: interrupted",
  );
});

test("a run says with which setting it was driven, also where its test is gone", () => {
  expect(sayRunOfTest({ pair: 3, side: "B" }, sides)).toBe(
    "Driven with B, gain 54 %, of the rig test: pair 3.",
  );
  expect(sayRunOfTest({ pair: 3, side: "A", void: "interrupted" }, undefined)).toBe(
    "Driven with setting A of a rig test that is not in the logbook: pair 3, void: interrupted.",
  );
});

test("a pair tells in its order what is driven, next and to come", () => {
  const next = { pair: 3, side: "A", isFirst: false } as const;
  expect(sayPairMark({ n: 3, first: "B", b: driven }, next)).toBe("Pair 3: B driven, A next");
  expect(sayPairMark({ n: 4, first: "A" }, next)).toBe("Pair 4: A to come, B to come");
  expect(sayPairsDriven(progress())).toBe("2 of 8 pairs driven");
});

test("a half pair of another evening begins anew, and that is said once it is next", () => {
  const half = { ...driven, pair: 3, side: "B", why: { because: "alone" } } as const;
  expect(sayBegunAnew(progress({ voided: [half] }))).toMatch(/begins anew/);
  expect(sayBegunAnew(progress({ voided: [{ ...half, pair: 2 }] }))).toBe("");
  expect(sayBegunAnew(progress({ voided: [half], next: { pair: 3, side: "A", isFirst: false } }))).toBe("");
});

test.each([
  [{ because: "void", words: "wrong setting on" }, "void: wrong setting on"],
  [{ because: "alone" }, "the other run of its pair was not driven that evening"],
  [{ because: "second first" }, "driven before the run its pair begins with"],
  [{ because: "again" }, "its place in the pair was filled already"],
  [{ because: "not planned" }, "the test has no such pair"],
  [{ because: "figure", reason: { needs: 5, of: "clean lap", has: 3 } }, "needs 5 clean laps, has 3"],
] as const)("a run that does not count says why: %j", (why, said) => {
  expect(sayWhyAside({ why })).toBe(said);
});

test("stopping early says what it does to the answer before it is done", () => {
  expect(sayStopEarly({ complete: 2, planned: 8 })).toMatch(/^After 2 of 8 pairs nothing can be told/);
  expect(sayStopEarly({ complete: 5, planned: 8 })).toMatch(
    /^After 5 of 8 pairs .* no verdict.* It cannot go on afterwards\.$/,
  );
});
