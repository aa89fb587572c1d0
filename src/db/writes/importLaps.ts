import { type Id, type Lap, lapsInOrder, type Run } from "#domain";
import { checkRow } from "../checks/checkRow.ts";
import { LedgerFault } from "../fault.ts";
import { type ImportedRun, type ImportedSession, newPart, type SessionThere } from "../importedSession.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { comboNamed } from "./combos.ts";
import { liveRunsOf, sessionsOf } from "./rowsOf.ts";
import { stampNew } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/**
 * Stores the laps of a table as sessions, all or none; undone, all of it goes. Laps that are there already are left
 * out, and the others of their session join it. A session of the same id is never stored twice.
 * @param takesKnown store laps that are there already as well, in sessions of their own
 */
export function importLaps(
  book: Logbook,
  { sessions, takesKnown }: { readonly sessions: readonly ImportedSession[]; readonly takesKnown: boolean },
): Promise<Change> {
  return write(book, "Nothing imported", async (writer) => {
    const combos = new Map<string, Id>();
    const own = new Set(sessions.map(({ id }) => id));
    let laps = 0;
    let touched = 0;
    for (const session of sessions) {
      if ((await writer.find("sessions", session.id)) !== undefined) continue;
      const comboId = await comboOf(writer, session, combos);
      const there = takesKnown ? [] : await sessionsOn(writer, comboId, session.date, own);
      const part = newPart(session, there);
      const count = part.runs.flat().length;
      if (count === 0) continue;
      const runs = session.runs.map((run, index) => ({ ...run, laps: part.runs[index] ?? [] }));
      if (part.into === undefined) await storeSession(writer, session, comboId, runs);
      else await joinSession(writer, part.into, comboId, runs);
      laps += count;
      touched += 1;
    }
    for (const { table, after } of writer.edits()) {
      const checked = checkRow(table, after);
      if (!checked.ok) throw new LedgerFault("invalid", `Nothing imported: ${table}, ${checked.why}.`);
    }
    const [lapWord, sessionWord] = [laps === 1 ? "lap" : "laps", touched === 1 ? "session" : "sessions"];
    return changeOf(writer, `${laps} ${lapWord} imported in ${touched} ${sessionWord}`);
  });
}

async function comboOf(writer: Writer, session: ImportedSession, known: Map<string, Id>): Promise<Id> {
  const { car, track, layout, sectors } = session;
  const key = JSON.stringify([car, track, layout]);
  const found = known.get(key);
  if (found !== undefined) return found;
  const { comboId } = await comboNamed(writer, {
    car: { name: car },
    track: { name: track },
    layout: { name: layout },
    ...(sectors === undefined ? {} : { sectors }),
  });
  known.set(key, comboId);
  return comboId;
}

/** Sessions of the combo on the date that were in the book before this import. */
async function sessionsOn(
  writer: Writer,
  comboId: Id,
  date: string,
  own: ReadonlySet<Id>,
): Promise<SessionThere[]> {
  const sessions = (await sessionsOf(writer, comboId)).filter(
    (session) => session.deletedAt === undefined && session.date === date && !own.has(session.id),
  );
  const there: SessionThere[] = [];
  for (const { id } of sessions)
    there.push({ id, laps: (await liveRunsOf(writer, id)).flatMap(lapsInOrder) });
  return there;
}

type Runs = readonly ImportedRun[];

async function storeSession(
  writer: Writer,
  session: ImportedSession,
  comboId: Id,
  runs: Runs,
): Promise<void> {
  const { id, date, startedAt, isTimeOfDayKnown, zone, focus = "free", note = "", conditions } = session;
  const driven = isTimeOfDayKnown
    ? runs.flatMap(({ laps }) => laps).reduce((sum, { lap }) => sum + (lap.ms ?? 0), 0)
    : 0;
  const endedAt = startedAt + driven;
  await writer.add(
    "sessions",
    {
      comboId,
      date,
      startedAt,
      isTimeOfDayKnown,
      zone,
      endedAt,
      focus,
      note,
      ...(conditions === undefined ? {} : { conditions }),
    },
    id,
  );
  await addRuns(writer, { sessionId: id, comboId, startedAt, endedAt }, runs, 0);
}

/** Adds laps to a session that is there: each to the like run of its place, or to a new one at the end. */
async function joinSession(writer: Writer, sessionId: Id, comboId: Id, runs: Runs): Promise<void> {
  const there = await liveRunsOf(writer, sessionId);
  const { startedAt, endedAt = startedAt } = await writer.get("sessions", sessionId);
  const others: ImportedRun[] = [];
  for (const [index, run] of runs.entries()) {
    const old = there[index];
    if (old === undefined || !isLike(old, run)) others.push(run);
    else if (run.laps.length > 0)
      await writer.put("runs", { ...old, laps: [...old.laps, ...newLaps(writer, run.laps, lastPlace(old))] });
  }
  const last = Math.max(0, ...there.map(({ n }) => n));
  await addRuns(writer, { sessionId, comboId, startedAt, endedAt }, others, last);
}

/** Laps of another kind of run, of a guest or beside a summary would count for something they are not. */
function isLike(run: Run, { settings }: ImportedRun): boolean {
  return run.kind === settings.kind && run.guest === settings.guest && run.summary === undefined;
}

type Around = Pick<Run, "sessionId" | "comboId" | "startedAt"> & { readonly endedAt: number };

async function addRuns(writer: Writer, around: Around, runs: Runs, last: number): Promise<void> {
  const filled = runs.filter(({ laps }) => laps.length > 0);
  for (const [index, { settings, laps }] of filled.entries())
    await writer.add("runs", { ...settings, ...around, n: last + index + 1, laps: newLaps(writer, laps, 0) });
}

const lastPlace = ({ laps }: Run) => laps.reduce((most, { n }) => Math.max(most, n), 0);

function newLaps(writer: Writer, laps: ImportedRun["laps"], last: number): Lap[] {
  return laps.map(({ lap }, index) =>
    stampNew<Lap>({ ...lap, n: last + index + 1 }, writer.newId(), writer.now),
  );
}
