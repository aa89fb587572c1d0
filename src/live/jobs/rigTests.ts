import type { Id } from "#domain";
import type { JobRun } from "./job.ts";
import { type RigTestPage, runRigTestPages } from "./rigTestPages.ts";

export interface RigTestsDetails {
  /** One of the two records of a test. */
  readonly rigId: Id;
}

/** A rig test in which a record of the rig was tried, and what it says. */
export interface FoundRigTest extends RigTestPage {
  readonly id: Id;
  readonly comboId: Id;
  /** Which of its two settings the record is. */
  readonly side: "A" | "B";
  /** The record it was tried against; undefined where that one is gone. */
  readonly against: RigTestPage["records"][number] | undefined;
}

/** What the rig tests of a record say, the oldest first. */
export const runRigTests: JobRun<RigTestsDetails, FoundRigTest[]> = async (book, { rigId }) =>
  testsOfRecord(await runRigTestPages(book, {}), rigId);

/** Those of some rig tests in which a record was tried. */
export function testsOfRecord(pages: readonly RigTestPage[], rigId: Id): FoundRigTest[] {
  return pages
    .filter(({ test }) => test.rigA === rigId || test.rigB === rigId)
    .map((page): FoundRigTest => {
      const { id, comboId, rigA, rigB } = page.test;
      const side = rigB === rigId ? "B" : "A";
      const other = side === "B" ? rigA : rigB;
      return { ...page, id, comboId, side, against: page.records.find((record) => record.id === other) };
    });
}
