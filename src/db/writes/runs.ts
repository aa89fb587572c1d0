import type { Id, Run, RunSummary, Session } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch } from "../patch.ts";
import type { Change } from "./change.ts";
import { addRunAfter, endRuns, type RunSettings } from "./newRun.ts";
import { liveRunsOf, runsOf, sessionsOf } from "./rowsOf.ts";
import type { Fields } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** The fields of a run that may be changed in place; moving has its own writes. */
export type RunPatch = Patch<Omit<Fields<Run>, "sessionId" | "comboId" | "n" | "laps">>;

/** "Run 2", by its place among the session's runs that are not deleted. */
async function called(writer: Writer, run: Run): Promise<string> {
  const runs = await liveRunsOf(writer, run.sessionId);
  return `Run ${runs.findIndex(({ id }) => id === run.id) + 1}`;
}

export interface NewRun {
  readonly sessionId: Id;
  /** Made when the driver asked for the run, so that trying again makes no second one. */
  readonly id?: Id;
  readonly settings?: RunSettings;
}

/** Adds the next run, with the settings of the run before; in an open session the run before ends now. */
export function addRun(book: Logbook, run: NewRun): Promise<Change & { readonly runId: Id }> {
  return write(book, "Run not stored", async (writer) => {
    const known = run.id === undefined ? undefined : await writer.find("runs", run.id);
    if (known) return { what: "Run already stored", edits: [], runId: known.id };
    const session = await writer.get("sessions", run.sessionId);
    const before = (await liveRunsOf(writer, session.id)).at(-1);
    if (session.endedAt === undefined) await endRuns(writer, session.id, writer.now);
    const added = await addRunAfter(writer, session, before, run.settings, run.id);
    return { ...changeOf(writer, `${await called(writer, added)} begun`), runId: added.id };
  });
}

/** Adds a run written as a whole: laps driven, best, usual, number off. */
export function addSummaryRun(
  book: Logbook,
  { summary, ...run }: NewRun & { readonly summary: RunSummary },
): Promise<Change & { readonly runId: Id }> {
  return addRun(book, { ...run, settings: { ...run.settings, summary } });
}

/** Changes named fields of a run; an optional field given as undefined is removed. */
export function editRun(
  book: Logbook,
  edit: { readonly runId: Id; readonly patch: RunPatch; readonly expected?: Run },
): Promise<Change> {
  return write(book, "Run not changed", async (writer) => {
    const before = await writer.get("runs", edit.runId);
    await writer.patch("runs", edit.runId, edit.patch);
    const overwrote = overwrittenFields(before, edit.patch, edit.expected);
    return changeOf(writer, `${await called(writer, before)} changed`, overwrote);
  });
}

/** Ends a run; without `at`, now. */
export function endRun(
  book: Logbook,
  { runId, at }: { readonly runId: Id; readonly at?: number },
): Promise<Change> {
  return write(book, "Run not ended", async (writer) => {
    const run = await writer.get("runs", runId);
    await writer.patch("runs", runId, { endedAt: Math.max(at ?? writer.now, run.startedAt) });
    return changeOf(writer, `${await called(writer, run)} ended`);
  });
}

/** Marks a run as deleted; its laps go with it. */
export function deleteRun(book: Logbook, { runId }: { readonly runId: Id }): Promise<Change> {
  return write(book, "Run not deleted", async (writer) => {
    const what = `${await called(writer, await writer.get("runs", runId))} deleted`;
    await writer.remove("runs", runId);
    return changeOf(writer, what);
  });
}

/** Moves a run to the end of another session, and to that session's combo. */
export function moveRunToSession(
  book: Logbook,
  { runId, sessionId }: { readonly runId: Id; readonly sessionId: Id },
): Promise<Change> {
  return write(book, "Run not moved", async (writer) => {
    const what = `${await called(writer, await writer.get("runs", runId))} moved`;
    await moveInto(writer, runId, await writer.get("sessions", sessionId));
    return changeOf(writer, what);
  });
}

/** Moves a run to another combo: into that combo's session of the same date, or into a new one made for it. */
export function moveRunToCombo(
  book: Logbook,
  { runId, comboId }: { readonly runId: Id; readonly comboId: Id },
): Promise<Change & { readonly sessionId: Id }> {
  return write(book, "Run not moved", async (writer) => {
    const run = await writer.get("runs", runId);
    const what = `${await called(writer, run)} moved`;
    await writer.get("combos", comboId);
    const from = await writer.get("sessions", run.sessionId);
    const session = await sessionLike(writer, from, run, comboId);
    await moveInto(writer, runId, session);
    return { ...changeOf(writer, what), sessionId: session.id };
  });
}

async function moveInto(writer: Writer, runId: Id, session: Session): Promise<void> {
  const n = ((await runsOf(writer, session.id)).at(-1)?.n ?? 0) + 1;
  await writer.patch("runs", runId, { sessionId: session.id, comboId: session.comboId, n });
}

/** A combo's session of the same date, or a new one that begins with the run. */
async function sessionLike(writer: Writer, from: Session, run: Run, comboId: Id): Promise<Session> {
  const known = (await sessionsOf(writer, comboId)).find(
    ({ date, deletedAt }) => date === from.date && deletedAt === undefined,
  );
  if (known) return known;
  const { isTimeOfDayKnown, date, zone, focus, endedAt } = from;
  const fields = { comboId, startedAt: run.startedAt, isTimeOfDayKnown, date, zone, focus, note: "" };
  return writer.add("sessions", endedAt === undefined ? fields : { ...fields, endedAt });
}
