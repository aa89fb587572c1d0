import { numberedRuns } from "#combo";
import { combosWithNames, eachRunsOf, type ReadOnlyLogbook } from "#db";
import {
  type CalendarDate,
  comboName,
  type Focus,
  grouped,
  type Id,
  lapsDriven,
  mayBeFound,
  type Remark,
  type Run,
  type SearchTerms,
  type Session,
  searchSession,
} from "#domain";
import type { JobRun } from "./job.ts";

export interface SearchDetails {
  readonly terms: SearchTerms;
  /** Most sessions and most laps given. */
  readonly most: number;
}

export interface FoundSession {
  readonly sessionId: Id;
  readonly date: CalendarDate;
  readonly comboName: string;
  readonly focus: Focus;
  readonly note: string;
  /** Laps driven, as the list of sessions has them; a guest's are found, and not counted. */
  readonly laps: number;
  /** Laps of it that were found. */
  readonly found: number;
}

export interface FoundLap {
  readonly sessionId: Id;
  readonly lapId: Id;
  readonly date: CalendarDate;
  readonly comboName: string;
  readonly runNumber: number;
  readonly lapNumber: number;
  readonly ms: number | undefined;
  readonly decimals: number;
  readonly remarks: readonly Remark[];
  readonly note: string | undefined;
  /** Who drove, where it was someone else; "" where the name is not known. */
  readonly guest: string | undefined;
}

/** What was found, the newest first, and how much there is in all. */
export interface SearchResult {
  readonly sessions: readonly FoundSession[];
  readonly sessionCount: number;
  readonly laps: readonly FoundLap[];
  readonly lapCount: number;
}

/** Sessions and laps by words, remarks, focus, tyres, days and lap times, of the driver's own runs and of guests'. */
export const runSearch: JobRun<SearchDetails, SearchResult> = async (book, { terms, most }) => {
  const nameOf = await namesOfCombos(book);
  const candidates = new Map<Id, Session>();
  for (const session of await book.tables.sessions.toArray())
    if (session.deletedAt === undefined && mayBeFound(terms, session)) candidates.set(session.id, session);

  const sessions: FoundSession[] = [];
  const laps: { readonly at: number; readonly lap: FoundLap }[] = [];
  const look = (session: Session, runs: readonly Run[]) => {
    const name = nameOf.get(session.comboId) ?? "";
    const found = searchSession(terms, session, name, numberedRuns(runs));
    if (found.isFound) sessions.push(sessionOf(session, name, runs, found.laps.length));
    for (const { run, lap, runNumber, lapNumber } of found.laps)
      laps.push({
        at: session.startedAt,
        lap: {
          sessionId: session.id,
          lapId: lap.id,
          date: session.date,
          comboName: name,
          runNumber,
          lapNumber,
          ms: lap.ms,
          decimals: lap.decimals ?? 3,
          remarks: lap.remarks,
          note: lap.note,
          guest: run.guest,
        },
      });
  };
  await eachRunsOf(book, [...candidates.keys()], (runs) => {
    for (const [id, own] of grouped(runs, ({ sessionId }) => sessionId)) {
      const session = candidates.get(id);
      if (session !== undefined) look(session, own);
      candidates.delete(id);
    }
  });
  // Those left have no run yet.
  for (const session of candidates.values()) look(session, []);
  return {
    sessions: sessions.sort(newestFirst).slice(0, most),
    sessionCount: sessions.length,
    laps: laps
      .sort((a, b) => b.at - a.at)
      .slice(0, most)
      .map(({ lap }) => lap),
    lapCount: laps.length,
  };
};

async function namesOfCombos(book: ReadOnlyLogbook): Promise<ReadonlyMap<Id, string>> {
  const combos = await combosWithNames(book);
  return new Map(combos.map((named) => [named.combo.id, comboName(named)]));
}

function sessionOf(session: Session, name: string, runs: readonly Run[], found: number): FoundSession {
  const { id, date, focus, note } = session;
  const laps = runs.reduce((sum, run) => sum + (run.guest === undefined ? lapsDriven(run) : 0), 0);
  return { sessionId: id, date, comboName: name, focus, note, laps, found };
}

/** Days are dates, so the later text is the later day; the id tells sessions of one day apart. */
function newestFirst(a: FoundSession, b: FoundSession): number {
  const [keyA, keyB] = [`${a.date} ${a.sessionId}`, `${b.date} ${b.sessionId}`];
  return keyA < keyB ? 1 : -1;
}
