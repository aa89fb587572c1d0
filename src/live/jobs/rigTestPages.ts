import { runNumber } from "#combo";
import {
  preferences,
  type ReadOnlyLogbook,
  rigs,
  rigTests,
  runsOfSession,
  runsOfTest,
  sessionsOpen,
} from "#db";
import type { CalendarDate, Id, RigSettings, RigTest, Run } from "#domain";
import { type RigTestReport, rigTestReport } from "#stats";
import type { JobRun } from "./job.ts";
import { type DatedSession, sessionsOfRuns } from "./sessionsOfRuns.ts";

/** Which tests are asked for: one, those of a combo, or all. */
export interface RigTestPagesDetails {
  readonly testId?: Id;
  readonly comboId?: Id;
}

/** A rig test with all that its page says. */
export interface RigTestPage {
  readonly test: RigTest;
  readonly report: RigTestReport;
  /** The open session of its combo, in which its next run would be driven; null where none is open. */
  readonly openId: Id | null;
  /** The records that stand for its sides, as far as they are there: what an old test's settings are called. */
  readonly records: readonly { readonly id: Id; readonly name: string; readonly from: CalendarDate }[];
  /** The sessions in which its runs were driven, in their order. */
  readonly sessions: readonly DatedSession[];
  /** What its runs are called by in their sessions. */
  readonly numbers: Readonly<Record<Id, number>>;
}

/** Rig tests and what they say, the one planned first comes first. */
export const runRigTestPages: JobRun<RigTestPagesDetails, RigTestPage[]> = async (
  book,
  { testId, comboId },
) => {
  const tests = (await rigTests(book, comboId)).filter(({ id }) => testId === undefined || id === testId);
  if (tests.length === 0) return [];
  const [records, choices] = await Promise.all([rigs(book), preferences(book)]);
  return Promise.all(
    tests.map(async (test): Promise<RigTestPage> => {
      const runs = await runsOfTest(book, test);
      const openId = await drivenNow(book, test);
      return {
        test,
        openId,
        report: rigTestReport(test, runs, choices, openId),
        records: recordsOf(test, records),
        sessions: await sessionsOfRuns(book, runs),
        numbers: await numbersOf(book, runs),
      };
    }),
  );
};

/** The session in which a test's next run would be driven: the open one of its combo, null where none is open. */
async function drivenNow(book: ReadOnlyLogbook, { comboId }: RigTest): Promise<Id | null> {
  const open = await sessionsOpen(book);
  return open.find((session) => session.comboId === comboId)?.id ?? null;
}

async function numbersOf(book: ReadOnlyLogbook, runs: readonly Run[]): Promise<RigTestPage["numbers"]> {
  const ids = [...new Set(runs.map(({ sessionId }) => sessionId))];
  const all = new Map(await Promise.all(ids.map(async (id) => [id, await runsOfSession(book, id)] as const)));
  return Object.fromEntries(runs.map((run) => [run.id, runNumber(run, all.get(run.sessionId) ?? [])]));
}

/** The records of a test's two sides that are there. */
export function recordsOf({ rigA, rigB }: RigTest, records: readonly RigSettings[]): RigTestPage["records"] {
  return records
    .filter(({ id }) => id === rigA || id === rigB)
    .map(({ id, name, from }) => ({ id, name, from }));
}
