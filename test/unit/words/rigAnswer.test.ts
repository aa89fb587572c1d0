import { expect, test } from "vitest";
import { known } from "#domain";
import type { RigTestReport } from "#stats";
import { rigAnswerShift, sayLatestRig, sayRigAnswer, sayRigEvidence, sayRigName } from "#words";

const step = { step: known({ estimate: -310, low: -500, high: -120, isQuestioned: false }) };
const rig = { name: "Lower gain", from: "2026-09-30" };

test("without a test the weeks before and after answer, and say that they are none", () => {
  expect(sayRigAnswer({ tests: [], step })).toBe("Faster by 0.31 s, very likely at least 0.12 s");
  expect(sayRigEvidence({ tests: [] })).toBe("from the weeks before and after; not a test");
  expect(rigAnswerShift({ tests: [], step })).toMatchObject({ estimate: -310, low: -500, high: -120 });
  expect(sayLatestRig({ tests: [], step, rig })).toBe(
    "Lower gain: faster by 0.31 s, very likely at least 0.12 s",
  );
});

test("a test in pairs of runs answers before the weeks, the last of several, from the side of the record", () => {
  const verdict = known({ estimate: 200, low: 80, high: 320 } as never);
  const report = { verdict, isTooGood: false } as unknown as RigTestReport;
  const older = {
    report: { ...report, verdict: known({ estimate: -900, low: -1000, high: -800 }) },
    side: "A",
  };
  const tests = [older as never, { report, side: "A" as const }];
  expect(rigAnswerShift({ tests, step })).toEqual({ estimate: -200, low: -320, high: -80 });
  expect(sayRigAnswer({ tests, step })).toMatch(/[Ff]aster by 0\.20 s/);
  expect(sayRigEvidence({ tests })).toBe("tested in pairs of runs");
});

test("where nothing was driven, it says so, and there is no difference to draw", () => {
  expect(sayRigAnswer({ tests: [], step: undefined })).toBe("Nothing was driven before and after it");
  expect(rigAnswerShift({ tests: [], step: undefined })).toBeUndefined();
});

test("a record without a name is called by its date", () => {
  expect(sayRigName(rig)).toBe("Lower gain");
  expect(sayRigName({ name: "", from: "2026-09-30" })).toBe("From Wed 30 Sep 2026");
});
