import { Dexie } from "dexie";
import {
  addDays,
  type CalendarDate,
  type Combo,
  dateDoubt,
  firstVersionAfter,
  type Id,
  type Run,
  type Session,
} from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { isLive, within } from "./ranges.ts";

const dayMs = 86_400_000;

/**
 * Sessions that have not been ended, newest first. Reads a sparse index and those rows only.
 * @param until instant from which on a session is dated after tomorrow: such ones come last
 */
export async function sessionsOpen(
  book: ReadOnlyLogbook,
  until = Number.POSITIVE_INFINITY,
): Promise<Session[]> {
  const open = await book.digests.orderBy("openSince").reverse().primaryKeys();
  const sessions = (await book.tables.sessions.bulkGet(open)).filter((session) => session !== undefined);
  return sessions.sort((a, b) => Number(a.startedAt >= until) - Number(b.startedAt >= until));
}

/**
 * The session that began last.
 * @param until instant from which on a session is dated after tomorrow: such a one is given only where there is no other
 */
export async function lastSession(book: ReadOnlyLogbook, until: number): Promise<Session | undefined> {
  const [last] = await recentSessions(book, 1, until);
  return last ?? book.tables.sessions.orderBy("startedAt").reverse().filter(isLive).first();
}

/**
 * Sessions whose date is in doubt, oldest first: what a clock that stood wrong, or a slip, has left. Of others it reads only
 * those dated before the app was made.
 */
export async function sessionsInDoubt(book: ReadOnlyLogbook, today: CalendarDate): Promise<Session[]> {
  const { sessions } = book.tables;
  const isInDoubt = (session: Session) => isLive(session) && dateDoubt(session, today) !== undefined;
  // No zone is so far east that a day has begun in it two days before it has in UTC.
  const early = Math.min(firstVersionAfter + 2 * dayMs, Date.parse(addDays(today, 1)));
  const [old, ahead] = await Promise.all([
    sessions.where("startedAt").below(early).filter(isInDoubt).toArray(),
    sessions
      .where("startedAt")
      .aboveOrEqual(Date.parse(addDays(today, 1)))
      .filter(isInDoubt)
      .toArray(),
  ]);
  return [...old, ...ahead];
}

/** A session by its id; undefined when it is not there or deleted. */
export async function sessionOf(book: ReadOnlyLogbook, id: Id): Promise<Session | undefined> {
  const session = await book.tables.sessions.get(id);
  return session && isLive(session) ? session : undefined;
}

/** Runs of a session with their laps, in order. Laps marked as deleted are still inside: `lapsInOrder` drops them. */
export function runsOfSession(book: ReadOnlyLogbook, sessionId: Id): Promise<Run[]> {
  return within(book.tables.runs, "[sessionId+n]", sessionId).filter(isLive).toArray();
}

export interface SessionWithRuns {
  readonly session: Session;
  readonly combo: Combo | undefined;
  readonly runs: readonly Run[];
}

/** A session, its combo and its runs; undefined when it is not there or deleted. */
export async function sessionWithRuns(book: ReadOnlyLogbook, id: Id): Promise<SessionWithRuns | undefined> {
  const session = await sessionOf(book, id);
  if (session === undefined) return undefined;
  const [combo, runs] = await Promise.all([book.tables.combos.get(session.comboId), runsOfSession(book, id)]);
  return { session, combo, runs };
}

/** Sessions of a combo, oldest first; no run and no lap is read. */
export function sessionsOfCombo(book: ReadOnlyLogbook, comboId: Id): Promise<Session[]> {
  return within(book.tables.sessions, "[comboId+startedAt]", comboId).filter(isLive).toArray();
}

/** A combo's session before the one that began at an instant; undefined when that was the first. */
export function sessionBefore(
  book: ReadOnlyLogbook,
  comboId: Id,
  startedAt: number,
): Promise<Session | undefined> {
  return book.tables.sessions
    .where("[comboId+startedAt]")
    .between([comboId, Dexie.minKey], [comboId, startedAt], true, false)
    .reverse()
    .filter(isLive)
    .first();
}

/** Runs of a combo with their laps, oldest first. For jobs: a long history is many rows. */
export function runsOfCombo(book: ReadOnlyLogbook, comboId: Id): Promise<Run[]> {
  return within(book.tables.runs, "[comboId+startedAt]", comboId).filter(isLive).toArray();
}

/** A run by its id; undefined when it is not there or deleted. */
export async function runOf(book: ReadOnlyLogbook, id: Id): Promise<Run | undefined> {
  const run = await book.tables.runs.get(id);
  return run && isLive(run) ? run : undefined;
}

/** Number of sessions: what is kept outside the database, to notice when a browser has cleared it. */
export function sessionCount(book: ReadOnlyLogbook): Promise<number> {
  return book.digests.count();
}

/** The sessions that began last before an instant, newest first. */
export function recentSessions(book: ReadOnlyLogbook, count: number, until: number): Promise<Session[]> {
  return book.tables.sessions.where("startedAt").below(until).reverse().filter(isLive).limit(count).toArray();
}

/** Sessions read in one go, so that their laps fit into memory. */
const atOnce = 200;

/**
 * Runs of many sessions with their laps, handed on some sessions at a time, so that 100,000 laps are never held at
 * once. For jobs.
 * @param each is given the runs of some of the sessions, in no order of sessions, those of one session in theirs
 */
export async function eachRunsOf(
  book: ReadOnlyLogbook,
  sessionIds: readonly Id[],
  each: (runs: readonly Run[]) => void,
): Promise<void> {
  const ids = sessionIds.toSorted();
  for (let at = 0; at < ids.length; at += atOnce) {
    const some = ids.slice(at, at + atOnce);
    const wanted = new Set(some);
    const rows = await book.tables.runs
      .where("[sessionId+n]")
      .between([some[0], Dexie.minKey], [some.at(-1), Dexie.maxKey])
      .toArray();
    each(rows.filter((run) => isLive(run) && wanted.has(run.sessionId)));
  }
}
