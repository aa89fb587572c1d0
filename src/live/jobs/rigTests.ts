import { preferences, rigs, rigTests, runsOfTest } from "#db";
import type { CalendarDate, Id, RigTest } from "#domain";
import { type RigTestReport, rigTestReport } from "#stats";
import type { JobRun } from "./job.ts";
import { type RigTestPage, recordsOf } from "./rigTestPages.ts";
import { type DatedSession, sessionsOfRuns } from "./sessionsOfRuns.ts";

export interface RigTestsDetails {
  /** One of the two records of a test. */
  readonly rigId: Id;
}

/** A rig test in which a record of the rig was tried, and what it says. */
export interface FoundRigTest {
  readonly id: Id;
  readonly comboId: Id;
  readonly test: RigTest;
  /** The records of its two sides that are there: what the settings of an old test are called. */
  readonly records: RigTestPage["records"];
  /** Which of its two settings the record is. */
  readonly side: "A" | "B";
  /** The record it was tried against; undefined where that one is gone. */
  readonly against: { readonly id: Id; readonly name: string; readonly from: CalendarDate } | undefined;
  readonly report: RigTestReport;
  /** The sessions in which the pairs were driven, in their order. */
  readonly sessions: readonly DatedSession[];
}

/** What the rig tests of a record say, the oldest first. */
export const runRigTests: JobRun<RigTestsDetails, FoundRigTest[]> = async (book, { rigId }) => {
  const tests = (await rigTests(book)).filter(({ rigA, rigB }) => rigA === rigId || rigB === rigId);
  if (tests.length === 0) return [];
  const [records, choices] = await Promise.all([rigs(book), preferences(book)]);
  return Promise.all(
    tests.map(async (test): Promise<FoundRigTest> => {
      const side = test.rigB === rigId ? "B" : "A";
      const other = records.find(({ id }) => id === (side === "B" ? test.rigA : test.rigB));
      const runs = await runsOfTest(book, test);
      return {
        id: test.id,
        test,
        records: recordsOf(test, records),
        comboId: test.comboId,
        side,
        against: other && { id: other.id, name: other.name, from: other.from },
        report: rigTestReport(test, runs, choices),
        sessions: await sessionsOfRuns(book, runs),
      };
    }),
  );
};
