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
  const reportOf = (estimate: number) =>
    ({
      isOver: true,
      figure: "usual",
      complete: 8,
      verdict: known({ estimate, low: estimate - 120, high: estimate + 120 }),
    }) as unknown as RigTestReport;
  const older = { report: reportOf(900), side: "B" as const };
  const tests = [older, { ...older, report: reportOf(-200) }];
  expect(rigAnswerShift({ tests, step })).toMatchObject({ estimate: -200, low: -320, high: -80 });
  expect(sayRigAnswer({ tests, step })).toBe("Faster by 0.20 s, very likely at least 0.08 s");
  expect(sayRigEvidence({ tests })).toBe("tested in pairs of runs");
  const seenFromA = { ...older, side: "A" as const };
  expect(rigAnswerShift({ tests: [seenFromA], step })).toMatchObject({ estimate: -900 });
});

test("where nothing was driven, it says so, and there is no difference to draw", () => {
  expect(sayRigAnswer({ tests: [], step: undefined })).toBe("Nothing was driven before and after it");
  expect(rigAnswerShift({ tests: [], step: undefined })).toBeUndefined();
});

test("a record without a name is called by its date", () => {
  expect(sayRigName(rig)).toBe("Lower gain");
  expect(sayRigName({ name: "", from: "2026-09-30" })).toBe("From Wed 30 Sep 2026");
});
