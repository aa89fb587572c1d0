import { Dexie } from "dexie";
import { type Id, isMeasure, lapsInOrder, type Run, type Session } from "#domain";
import type { Span } from "../digests.ts";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { isLive, within } from "./ranges.ts";
import { runsOfSession } from "./sessions.ts";

/** So many runs of the page are read, and so many of each other combo. */
const ofPage = 12;
const ofOthers = 3;
const mostOthers = 8;

/** Runs outside a session that its laps can be judged by. The farther ones are read only where the nearer ones are none. */
export interface RunsToJudgeBy {
  /** The page's last runs before the session. */
  readonly page: readonly Run[];
  /** Last runs of the layout's other combos. */
  readonly layout: readonly Run[];
  /** Last runs of the driver's other combos. */
  readonly elsewhere: readonly Run[];
}

/**
 * Reads a few runs, however long the history is. A live query of it is not woken by laps of the session being driven.
 * @param span the session's page
 */
export async function runsToJudgeBy(
  book: ReadOnlyLogbook,
  session: Session,
  span: Span,
): Promise<RunsToJudgeBy> {
  const page = await runsOfPage(book, session, span);
  if (page.length > 0) return { page, layout: [], elsewhere: [] };
  const combo = await book.tables.combos.get(session.comboId);
  return runsOfOthers(book, session.comboId, combo?.layoutId);
}

/** The same for laps of a combo that no session is known of; the combo and its layout may be new. */
export async function runsToJudgeComboBy(
  book: ReadOnlyLogbook,
  { comboId, layoutId }: { readonly comboId: Id | undefined; readonly layoutId: Id | undefined },
): Promise<RunsToJudgeBy> {
  const page = comboId === undefined ? [] : await lastRunsOf(book, comboId, ofPage);
  return page.length > 0 ? { page, layout: [], elsewhere: [] } : runsOfOthers(book, comboId, layoutId);
}

async function runsOfOthers(
  book: ReadOnlyLogbook,
  comboId: Id | undefined,
  layoutId: Id | undefined,
): Promise<RunsToJudgeBy> {
  const layout = layoutId === undefined ? [] : await runsOfLayout(book, layoutId, comboId);
  const elsewhere = layout.length > 0 ? [] : await runsOfLastSessions(book, comboId);
  return { page: [], layout, elsewhere };
}

const isToJudgeBy = (run: Run) => isLive(run) && run.guest === undefined && lapsInOrder(run).some(isMeasure);

async function runsOfPage(book: ReadOnlyLogbook, session: Session, { from, to }: Span): Promise<Run[]> {
  const { comboId, startedAt } = session;
  const between = (lower: number, upper: number) =>
    book.tables.runs.where("[comboId+startedAt]").between([comboId, lower], [comboId, upper], true, false);
  const before = await between(from, Math.min(startedAt, to))
    .reverse()
    .filter(isToJudgeBy)
    .limit(ofPage)
    .toArray();
  // A session entered afterwards may be the first of all. One being driven is not: its own laps would wake the query.
  if (before.length > 0 || (session.isTimeOfDayKnown && session.endedAt === undefined)) return before;
  return between(startedAt, to)
    .filter((run) => isToJudgeBy(run) && run.sessionId !== session.id)
    .limit(ofPage)
    .toArray();
}

async function runsOfLayout(book: ReadOnlyLogbook, layoutId: Id, comboId: Id | undefined): Promise<Run[]> {
  const others = await book.tables.combos
    .where("layoutId")
    .equals(layoutId)
    .filter((other) => isLive(other) && other.id !== comboId)
    .limit(mostOthers)
    .toArray();
  return (await Promise.all(others.map(({ id }) => lastRunsOf(book, id, ofOthers)))).flat();
}

function lastRunsOf(book: ReadOnlyLogbook, comboId: Id, count: number): Promise<Run[]> {
  return within(book.tables.runs, "[comboId+startedAt]", comboId)
    .reverse()
    .filter(isToJudgeBy)
    .limit(count)
    .toArray();
}

async function runsOfLastSessions(book: ReadOnlyLogbook, comboId: Id | undefined): Promise<Run[]> {
  const sessions = await book.tables.sessions
    .where("startedAt")
    .between(Dexie.minKey, Dexie.maxKey)
    .reverse()
    .filter((session) => isLive(session) && session.comboId !== comboId)
    .limit(mostOthers)
    .toArray();
  const runs = await Promise.all(sessions.map(({ id }) => runsOfSession(book, id)));
  return runs.flat().filter(isToJudgeBy);
}
