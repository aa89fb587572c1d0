import { type PageSpan, pageOf } from "#combo";
import {
  type ComboWithNames,
  comboWithNames,
  pagesOfCombo,
  preferences,
  type ReadOnlyLogbook,
  referencesOfCombo,
  rigs,
  runsOfSession,
  sessionOf,
  targetsOfCombo,
  type UnreadableRun,
  unreadableRuns,
} from "#db";
import type { Id, Preferences, ReferenceLap, RigSettings, Run, Session, Target } from "#domain";
import { useRows } from "#live";

/** All that the page of one session rests on. */
export interface SessionData extends ComboWithNames {
  readonly session: Session;
  /** In order, deleted ones left out. */
  readonly runs: readonly Run[];
  /** Runs that are there and cannot be read; all figures are without them. */
  readonly unreadableRuns: readonly UnreadableRun[];
  readonly preferences: Preferences;
  /** The page of the combo's history that the session stands on. */
  readonly page: PageSpan;
  /** Archived ones among them: they ruled until they were. */
  readonly targets: readonly Target[];
  readonly references: readonly ReferenceLap[];
  readonly rigs: readonly RigSettings[];
}

/** Reads the rows of a session's page; null when the session is not there. */
export async function readSession(book: ReadOnlyLogbook, sessionId: Id): Promise<SessionData | null> {
  const session = await sessionOf(book, sessionId);
  const names = session && (await comboWithNames(book, session.comboId));
  if (session === undefined || names === undefined) return null;
  const { comboId } = session;
  const [runs, chosen, pages, targets, references, records] = await Promise.all([
    runsOfSession(book, sessionId),
    preferences(book),
    pagesOfCombo(book, comboId),
    targetsOfCombo(book, comboId),
    referencesOfCombo(book, comboId),
    rigs(book),
  ]);
  // Known only now that the runs have been read.
  const gaps = await unreadableRuns(book, sessionId);
  return {
    ...names,
    session,
    runs,
    unreadableRuns: gaps,
    preferences: chosen,
    page: pageOf(pages, session.startedAt),
    targets,
    references,
    rigs: records,
  };
}

/** The rows of a session's page; null when the session is not there, undefined until they have been read. */
export function useSession(sessionId: Id): SessionData | null | undefined {
  return useRows((book) => readSession(book, sessionId), [sessionId]);
}
