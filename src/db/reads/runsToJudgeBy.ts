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
  const layout = await runsOfLayout(book, session.comboId);
  if (layout.length > 0) return { page, layout, elsewhere: [] };
  return { page, layout, elsewhere: await runsOfLastSessions(book, session.comboId) };
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

async function runsOfLayout(book: ReadOnlyLogbook, comboId: Id): Promise<Run[]> {
  const combo = await book.tables.combos.get(comboId);
  if (combo === undefined) return [];
  const others = await book.tables.combos
    .where("layoutId")
    .equals(combo.layoutId)
    .filter((other) => isLive(other) && other.id !== comboId)
    .limit(mostOthers)
    .toArray();
  const runs = await Promise.all(
    others.map(({ id }) =>
      within(book.tables.runs, "[comboId+startedAt]", id)
        .reverse()
        .filter(isToJudgeBy)
        .limit(ofOthers)
        .toArray(),
    ),
  );
  return runs.flat();
}

async function runsOfLastSessions(book: ReadOnlyLogbook, comboId: Id): Promise<Run[]> {
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
