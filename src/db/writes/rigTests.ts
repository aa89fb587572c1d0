import { Dexie } from "dexie";
import { isUntouched } from "#combo";
import type { Id, RigSettings, RigTest, Run, RunOfTest } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { endRuns, type RunSettings } from "./newRun.ts";
import { addNextRun, driveWith } from "./nextRun.ts";
import { liveRunsOf } from "./rowsOf.ts";
import type { NewRow } from "./rowWrites.ts";
import { runInWords } from "./runInWords.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

export interface TestRunBegun extends Omit<RunOfTest, "id" | "void"> {
  readonly sessionId: Id;
  readonly testId: Id;
  /** Made when the driver asked for the run, so that trying again makes no second one. */
  readonly id?: Id;
}

/**
 * Begins a run of a rig test with the setting that is on: an open run of the session without laps becomes it; else the
 * open run ends and the next one is begun, with the other settings of the run before. It is driven for pace, at full effort,
 * by the driver himself.
 */
export function beginTestRun(
  book: Logbook,
  { sessionId, testId, pair, side, id }: TestRunBegun,
): Promise<Change & { readonly runId: Id }> {
  return write(book, "Run not begun", async (writer) => {
    const known = id === undefined ? undefined : await writer.find("runs", id);
    if (known) return { what: "Run already begun", edits: [], runId: known.id };
    const session = await writer.get("sessions", sessionId);
    const test = await writer.get("rigTests", testId);
    if (test.endedAt !== undefined) throw refused("the rig test has ended");
    if (test.pairs[pair - 1] === undefined) throw refused("the rig test has no such pair");
    if (test.comboId !== session.comboId) throw refused("the rig test is driven on another combo");
    if (session.endedAt !== undefined) throw refused("the session has ended");
    const settings = { kind: "pace", effort: "full", rigTest: { id: testId, pair, side } } as const;
    const last = (await liveRunsOf(writer, sessionId)).at(-1);
    // A line of the session's plan that is this test's is driven by it; no other is.
    const line = session.plan?.find(({ rigTest }) => rigTest === testId)?.id;
    const run =
      last !== undefined && isUntouched(last)
        ? await writer.patch("runs", last.id, { ...settings, line, guest: undefined })
        : await nextOf(writer, sessionId, last, { ...settings, line }, id);
    const what = `${await runInWords(writer, run)} begun with setting ${side} of the rig test`;
    return { ...changeOf(writer, what), runId: run.id };
  });
}

async function nextOf(
  writer: Writer,
  sessionId: Id,
  last: Run | undefined,
  settings: RunSettings,
  id: Id | undefined,
): Promise<Run> {
  await endRuns(writer, sessionId, writer.now);
  return addNextRun(writer, await writer.get("sessions", sessionId), last, settings, id);
}

/**
 * Says why a run of a rig test does not count; without a reason it counts again. Its laps stay. One that is being driven ends
 * with it, so that its setting can be driven anew at once; one without a lap yet becomes a run of practice.
 */
export function voidTestRun(
  book: Logbook,
  { runId, reason }: { readonly runId: Id; readonly reason: string | undefined },
): Promise<Change> {
  return write(book, "Run not changed", async (writer) => {
    const run = await writer.get("runs", runId);
    if (run.rigTest === undefined) throw refused("the run is of no rig test");
    const why = reason?.trim();
    if (why === "") throw refused("say why the run does not count");
    if (why !== undefined && isUntouched(run)) {
      await writer.patch("runs", runId, { rigTest: undefined });
      return changeOf(writer, `${await runInWords(writer, run)} is no run of the rig test`);
    }
    const { void: _, ...place } = run.rigTest;
    const rigTest = why === undefined ? place : { ...place, void: why };
    await writer.patch("runs", runId, { rigTest });
    if (why !== undefined && run.endedAt === undefined) await endRuns(writer, run.sessionId, writer.now);
    const what = why === undefined ? "counts in the rig test again" : "does not count in the rig test";
    return changeOf(writer, `${await runInWords(writer, run)} ${what}`);
  });
}

/** Ends a rig test before all its pairs are driven. */
export function stopTest(book: Logbook, testId: Id): Promise<Change> {
  return write(book, "Rig test not stopped", async (writer) => {
    await endTest(writer, await writer.get("rigTests", testId));
    return changeOf(writer, "Rig test stopped");
  });
}

/** A run begun for the test that has no lap yet is one of practice from now on. */
async function endTest(writer: Writer, { id, endedAt }: RigTest): Promise<void> {
  if (endedAt === undefined) await writer.patch("rigTests", id, { endedAt: writer.now });
  const open = await writer.transaction.table("digests").orderBy("openSince").primaryKeys();
  for (const sessionId of open as Id[])
    for (const run of await liveRunsOf(writer, sessionId))
      if (run.rigTest?.id === id && isUntouched(run))
        await writer.patch("runs", run.id, { rigTest: undefined });
}

/**
 * Marks a rig test as deleted. Its runs leave it in the same transaction: they are practice from then on, told and reckoned
 * with like any other.
 */
export function deleteRigTest(book: Logbook, testId: Id): Promise<Change> {
  return write(book, "Rig test not deleted", async (writer) => {
    const { comboId } = await writer.get("rigTests", testId);
    const runs = await writer.transaction
      .table<Run, Id>("runs")
      .where("[comboId+startedAt]")
      .between([comboId, Dexie.minKey], [comboId, Dexie.maxKey])
      .filter(({ rigTest, deletedAt }) => rigTest?.id === testId && deletedAt === undefined)
      .toArray();
    for (const { id } of runs) await writer.patch("runs", id, { rigTest: undefined });
    await writer.remove("rigTests", testId);
    return changeOf(writer, "Rig test deleted");
  });
}

/** Takes one run out of its rig test: it is practice from then on. */
export function leaveTest(book: Logbook, runId: Id): Promise<Change> {
  return write(book, "Run not changed", async (writer) => {
    const run = await writer.get("runs", runId);
    await writer.patch("runs", runId, { rigTest: undefined });
    return changeOf(writer, `${await runInWords(writer, run)} taken out of the rig test`);
  });
}

export interface SettingKept {
  readonly testId: Id;
  readonly side: "A" | "B";
  /** The record that begins with it, where the setting is another than the one in force. */
  readonly rig?: NewRow<"rigs"> | undefined;
}

/**
 * Records the setting that the driver keeps: the test is over, and where a record is given it begins in the same
 * transaction and stands for that side from then on.
 */
export function keepSetting(book: Logbook, { testId, side, rig }: SettingKept): Promise<Change> {
  return write(book, "Setting not kept", async (writer) => {
    const test = await writer.get("rigTests", testId);
    await endTest(writer, test);
    const begun = rig && (await recordBegun(writer, rig));
    const ofSide = begun && (side === "A" ? { rigA: begun.id } : { rigB: begun.id });
    await writer.patch("rigTests", testId, { kept: side, ...ofSide });
    return changeOf(writer, `Setting ${side} kept`);
  });
}

async function recordBegun(writer: Writer, { id, ...fields }: NewRow<"rigs">): Promise<RigSettings> {
  const known = id === undefined ? undefined : await writer.find("rigs", id);
  if (known) return known;
  const rig = await writer.add("rigs", fields, id);
  await driveWith(writer, rig);
  return rig;
}

function refused(why: string): LedgerFault {
  return new LedgerFault("invalid", `Nothing was changed: ${why}.`);
}
