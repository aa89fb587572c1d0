import { holdsAnything } from "#combo";
import type { Id, Run, RunSummary } from "#domain";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch } from "../patch.ts";
import type { Change } from "./change.ts";
import { endRuns, type RunSettings } from "./newRun.ts";
import { addNextRun } from "./nextRun.ts";
import { liveRunsOf } from "./rowsOf.ts";
import { runInWords } from "./runInWords.ts";
import type { Fields } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** The fields of a run that may be changed in place; moving has its own writes. */
export type RunPatch = Patch<Omit<Fields<Run>, "sessionId" | "comboId" | "n" | "laps">>;

export interface NewRun {
  readonly sessionId: Id;
  /** Made when the driver asked for the run, so that trying again makes no second one. */
  readonly id?: Id;
  readonly settings?: RunSettings;
}

/**
 * Adds the next run, at pace and full effort, with the other settings of the run before; in an open session the run before
 * ends now.
 */
export function addRun(book: Logbook, run: NewRun): Promise<Change & { readonly runId: Id }> {
  return write(book, "Run not stored", async (writer) => {
    const known = await storedAlready(writer, run);
    if (known) return known;
    const session = await writer.get("sessions", run.sessionId);
    const before = (await liveRunsOf(writer, session.id)).at(-1);
    if (session.endedAt === undefined) await endRuns(writer, session.id, writer.now);
    const added = await addNextRun(writer, session, before, run.settings, run.id);
    return { ...changeOf(writer, `${await runInWords(writer, added)} begun`), runId: added.id };
  });
}

async function storedAlready(writer: Writer, { id }: NewRun) {
  const known = id === undefined ? undefined : await writer.find("runs", id);
  return known && { what: "Run already stored", edits: [], runId: known.id };
}

/**
 * Stores a run written as a whole: laps driven, best, usual, number off. It fills the open run that is named, else it
 * is a run of its own. In an open session it has ended, and the next run begins, as after any other.
 */
export function addSummaryRun(
  book: Logbook,
  { summary, fills, ...run }: NewRun & { readonly summary: RunSummary; readonly fills?: Id | undefined },
): Promise<Change & { readonly runId: Id }> {
  return write(book, "Run not stored", async (writer) => {
    const known = await storedAlready(writer, run);
    if (known) return known;
    const session = await writer.get("sessions", run.sessionId);
    const isOpen = session.endedAt === undefined;
    const before = (await liveRunsOf(writer, session.id)).at(-1);
    if (isOpen) await endRuns(writer, session.id, writer.now);
    const settings = { ...run.settings, summary, ...(isOpen && { endedAt: writer.now }) };
    const stored =
      fills === undefined
        ? await addNextRun(writer, session, before, settings, run.id)
        : await writer.patch("runs", fills, { summary });
    if (isOpen) await addNextRun(writer, session, stored);
    return {
      ...changeOf(writer, `${await runInWords(writer, stored)} stored as a summary`),
      runId: stored.id,
    };
  });
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
    return changeOf(writer, `${await runInWords(writer, before)} changed`, overwrote);
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
    return changeOf(writer, `${await runInWords(writer, run)} ended`);
  });
}

/** Opens an ended run again, where it was ended by mistake: what was begun after it and holds nothing yet goes. */
export function reopenRun(book: Logbook, { runId }: { readonly runId: Id }): Promise<Change> {
  return write(book, "Run not opened again", async (writer) => {
    const run = await writer.get("runs", runId);
    for (const later of await liveRunsOf(writer, run.sessionId))
      if (later.n > run.n && !holdsAnything(later)) await writer.remove("runs", later.id);
    await writer.patch("runs", runId, { endedAt: undefined });
    return changeOf(writer, `${await runInWords(writer, run)} opened again`);
  });
}

/** Marks a run as deleted; its laps go with it. */
export function deleteRun(book: Logbook, { runId }: { readonly runId: Id }): Promise<Change> {
  return write(book, "Run not deleted", async (writer) => {
    const what = `${await runInWords(writer, await writer.get("runs", runId))} deleted`;
    await writer.remove("runs", runId);
    return changeOf(writer, what);
  });
}
