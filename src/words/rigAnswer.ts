import { type RigSettings, sayDate } from "#domain";
import type { RigStep, RigTestReport } from "#stats";
import { sayRigStep } from "./rigStep.ts";
import { sayTestOfSide, shiftOf } from "./rigTest.ts";
import type { Shift } from "./shift.ts";

interface Answer {
  /** In their order; the last one counts. */
  readonly tests: readonly { readonly report: RigTestReport; readonly side: "A" | "B" }[];
  readonly step: (Pick<RigStep, "step"> & Partial<Pick<RigStep, "after">>) | undefined;
}

/**
 * What became of a change of the rig, in one sentence: what pairs of runs found, else what the weeks before and after say.
 * @example "Faster by 0.21 s, very likely at least 0.11 s"
 */
export function sayRigAnswer({ tests, step }: Answer): string {
  const test = tests.at(-1);
  if (test !== undefined) return sayTestOfSide(test.report, test.side);
  return step === undefined ? "Nothing was driven before and after it" : sayRigStep(step);
}

/** From what the sentence is known. */
export function sayRigEvidence({ tests }: Pick<Answer, "tests">): string {
  return tests.length > 0 ? "tested in pairs of runs" : "from the weeks before and after; not a test";
}

/** The difference that the sentence tells, ms; undefined where none can be told. */
export function rigAnswerShift({ tests, step }: Answer): Shift | undefined {
  const test = tests.at(-1);
  if (test !== undefined)
    return test.report.verdict.known ? shiftOf(test.report.verdict.value, test.side) : undefined;
  return step?.step.known ? step.step.value : undefined;
}

/** The name of a record, or its date. */
export function sayRigName({ name, from }: Pick<RigSettings, "name" | "from">): string {
  return name === "" ? `From ${sayDate(from)}` : name;
}

/**
 * The latest change of the rig and what became of it, as the answer to "did it help?".
 * @example "Lower gain: faster by 0.21 s, very likely at least 0.11 s"
 */
export function sayLatestRig(answer: Answer & { readonly rig: Pick<RigSettings, "name" | "from"> }): string {
  const said = sayRigAnswer(answer);
  return `${sayRigName(answer.rig)}: ${said.charAt(0).toLowerCase()}${said.slice(1)}`;
}
