import { accountTarget, numberedRuns, type PageSpan, pageOf } from "#combo";
import {
  comboWithNames,
  pagesOfCombo,
  preferences,
  type ReadOnlyLogbook,
  referencesOfCombo,
  rigs,
  rigTests,
  runsOfSession,
  runsOfTest,
  sessionOf,
  targetsOfCombo,
} from "#db";
import {
  comboName,
  type Id,
  outOfTest,
  type Preferences,
  type RigSettings,
  type Run,
  rigOn,
  type Session,
} from "#domain";
import { type BestCandidate, type SideBySide, sideBySide, testProgress, testRuns } from "#stats";
import { digestMaker } from "../digestMaker.ts";
import { pageBest } from "../pageBest.ts";
import type { JobRun } from "./job.ts";
import { type RigTestPage, recordsOf } from "./rigTestPages.ts";

export interface SideBySideDetails {
  readonly kind: "run" | "session";
  /** Ids of two runs or of two sessions, in any order. */
  readonly ids: readonly [Id, Id];
}

/** One of the two: where it is, the runs of it that are meant, and the rig records that they were driven with. */
export interface FoundSide {
  readonly session: Session;
  readonly comboName: string;
  /** By the numbers they go by in their session. */
  readonly runs: readonly { readonly run: Run; readonly number: number }[];
  readonly rigs: readonly RigSettings[];
  /** The rig tests that its runs are of: they were driven with a setting of the test, whatever record was in force. */
  readonly tests: readonly TestOfSide[];
}

interface TestOfSide extends Pick<RigTestPage, "test" | "records"> {
  readonly isOver: boolean;
}

/** The two, the earlier one first, and what is said of them. */
export interface FoundSides {
  readonly first: FoundSide;
  readonly second: FoundSide;
  readonly figures: SideBySide;
  /** The personal best of the page that both stand on; undefined where they stand on two, or nothing was driven clean. */
  readonly pb: Pick<BestCandidate, "ms" | "decimals"> | undefined;
}

/** Two runs or two sessions side by side; null where one of them is not there. */
export const runSideBySide: JobRun<SideBySideDetails, FoundSides | null> = async (book, { kind, ids }) => {
  const found = await Promise.all(ids.map((id) => sideOf(book, kind, id)));
  const [first, second] = found
    .flatMap((side) => (side === undefined ? [] : [side]))
    .sort((a, b) => startOf(a) - startOf(b));
  if (first === undefined || second === undefined) return null;
  const chosen = await preferences(book);
  const isOneCombo = first.session.comboId === second.session.comboId;
  const pages = await pagesOfCombo(book, second.session.comboId);
  const page = pageOf(pages, second.session.startedAt);
  const isOnePage = isOneCombo && first.session.startedAt >= page.from;
  const isUntold = kind === "run" && [first, second].some(({ tests }) => tests.some((test) => !test.isOver));
  const isOneTest = kind === "run" && isOfOneTest(first, second);
  const figures = sideBySide({
    kind,
    first: inputOf(first, isOneTest),
    second: inputOf(second, isOneTest),
    apart: isUntold ? "lasting test" : !isOneCombo ? "combo" : !isOnePage ? "page" : undefined,
    target: await measureOf(book, second.session, page, chosen),
    preferences: chosen,
  });
  const { comboId } = second.session;
  const best = isOnePage
    ? await pageBest(book, { comboId, span: { from: page.from, to: page.to } }, digestMaker(chosen))
    : undefined;
  return { first, second, figures, pb: best && { ms: best.ms, decimals: best.decimals } };
};

/** Runs of one test compare with each other once it is over. */
const isOfOneTest = ({ tests: [a] }: FoundSide, { tests: [b] }: FoundSide) =>
  a !== undefined && a.test.id === b?.test.id;

const inputOf = ({ session, runs }: FoundSide, isOneTest: boolean) => ({
  session,
  runs: runs.map(({ run }) => (isOneTest ? outOfTest(run) : run)),
});

const startOf = ({ session, runs }: FoundSide) => runs[0]?.run.startedAt ?? session.startedAt;

async function sideOf(
  book: ReadOnlyLogbook,
  kind: SideBySideDetails["kind"],
  id: Id,
): Promise<FoundSide | undefined> {
  const sessionId = kind === "session" ? id : (await book.tables.runs.get(id))?.sessionId;
  const session = sessionId === undefined ? undefined : await sessionOf(book, sessionId);
  const names = session && (await comboWithNames(book, session.comboId));
  if (session === undefined || names === undefined) return undefined;
  const [all, records] = await Promise.all([runsOfSession(book, session.id), rigs(book)]);
  const runs = numberedRuns(all).filter(({ run }) => kind === "session" || run.id === id);
  if (runs.length === 0) return undefined;
  const used = new Set(runs.map(({ run }) => run.rigId ?? rigOn(records, session.date)?.id));
  return {
    session,
    comboName: comboName(names),
    runs,
    rigs: records.filter((record) => used.has(record.id)),
    tests: await testsOf(book, session, runs, records),
  };
}

async function testsOf(
  book: ReadOnlyLogbook,
  { comboId }: Session,
  runs: FoundSide["runs"],
  records: readonly RigSettings[],
): Promise<TestOfSide[]> {
  const rows = runs.map(({ run }) => run);
  const found = (await rigTests(book, comboId)).filter((test) => testRuns(test, rows).length > 0);
  const chosen = await preferences(book);
  return Promise.all(
    found.map(async (test) => {
      const { isOver } = testProgress(test, await runsOfTest(book, test), chosen);
      return { test, records: recordsOf(test, records), isOver };
    }),
  );
}

/** What the later of the two is measured against: both accounts are, or they could not be compared. */
async function measureOf(book: ReadOnlyLogbook, session: Session, page: PageSpan, chosen: Preferences) {
  const { comboId, startedAt } = session;
  const [targets, references, pb] = await Promise.all([
    targetsOfCombo(book, comboId),
    referencesOfCombo(book, comboId),
    pageBest(
      book,
      { comboId, span: { from: page.from, to: startedAt }, except: session.id },
      digestMaker(chosen),
    ),
  ]);
  return accountTarget({ session, page, targets, references, pbBefore: pb?.ms });
}
