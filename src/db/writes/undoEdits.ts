import type { Run, Stamped, TableName, Tables } from "#domain";
import { differingFields, fieldOf, isSame, type Patch } from "../patch.ts";
import { versionFields } from "../versions.ts";
import type { Edit } from "./change.ts";
import { isInUse } from "./isInUse.ts";
import { stampChanged, stampDeleted } from "./stamp.ts";
import { type LapUndo, undoLaps } from "./undoLaps.ts";
import { isNumbered, undoNumbered } from "./undoNumbered.ts";
import type { Writer } from "./writer.ts";

const unread = new Set([...versionFields, "laps"]);

/** Takes edits back, the last one first. @returns what had to be left, in words, each once */
export async function undoEdits(writer: Writer, edits: readonly Edit[]): Promise<readonly string[]> {
  const skipped: string[] = [];
  const laps = undoLaps(edits);
  // Children before parents, so that a session begun by this change is free to go once its run has gone.
  for (const edit of [...edits].reverse()) skipped.push(...(await undoEdit(writer, edit, laps)));
  await keepOneOpenRun(writer, edits);
  return [...new Set(skipped)];
}

/** Where a run that the change began stays for the laps it has since, the run before it, which ended by it, stays ended. */
async function keepOneOpenRun(writer: Writer, edits: readonly Edit[]): Promise<void> {
  const runs = edits.filter(({ table }) => table === "runs");
  const begun = await Promise.all(
    runs.filter(({ before }) => before === undefined).map(({ id }) => writer.find("runs", id)),
  );
  const isOpen = (run: Run) => run.deletedAt === undefined && run.endedAt === undefined;
  const stays = begun.filter((run) => run !== undefined).filter(isOpen);
  for (const { id, before, after } of runs) {
    const run = before && (await writer.find("runs", id));
    const { endedAt } = (after ?? {}) as Partial<Run>;
    if (!run || !isOpen(run) || endedAt === undefined) continue;
    if (stays.some(({ sessionId }) => sessionId === run.sessionId))
      await writer.patch("runs", id, { endedAt });
  }
}

const words: Readonly<Record<TableName, string>> = {
  preferences: "preferences",
  cars: "the car",
  tracks: "the track",
  layouts: "the layout",
  combos: "the combo",
  pages: "the page",
  references: "the reference lap",
  sessions: "the session",
  runs: "the run",
  rigs: "the rig settings",
  targets: "the target",
  forecasts: "the forecast",
  rigTests: "the rig test",
  cornerReviews: "the corner review",
  plans: "the plan",
};

async function undoEdit(writer: Writer, edit: Edit, laps: LapUndo): Promise<string[]> {
  const { table, id, before, after } = edit;
  const current = await writer.find(table, id);
  const word = words[table];
  if (current === undefined) {
    if (before === undefined) return [];
    if (after !== undefined) return [`${word} is no longer there`];
    await writer.put(table, before);
    return [];
  }
  if (after === undefined) return [`${word} is there again already`];
  if (before === undefined) return undoNew(writer, edit, current, laps);

  const changed = differingFields(before, after).filter((field) => !unread.has(field));
  const free = changed.filter((field) => isSame(fieldOf(current, field), fieldOf(after, field)));
  const patch = Object.fromEntries(free.map((field) => [field, fieldOf(before, field)]));
  let isWhole = true;
  for (const field of changed.filter((one) => !free.includes(one))) {
    const [old, now] = [fieldOf(before, field), fieldOf(current, field)];
    const back = isNumbered(table, field) && undoNumbered(old, fieldOf(after, field), now);
    isWhole &&= back !== false && back.isWhole;
    if (back !== false && !isSame(back.list, now)) patch[field] = back.list;
  }
  const skipped = isWhole ? [] : [`${word} has been changed again since`];
  if (Object.keys(patch).length > 0) {
    await writer.put(
      table,
      stampChanged(current as Tables[typeof table], patch as Patch<Tables[typeof table]>, writer.now),
    );
  }
  if (table === "runs") skipped.push(...(await laps.undoRun(writer, edit as Edit & { table: "runs" })));
  return skipped;
}

/** Marks a row the change made as deleted, unless somebody changed or used it since. */
async function undoNew(writer: Writer, edit: Edit, current: Stamped, laps: LapUndo): Promise<string[]> {
  const { table, after } = edit;
  if (current.deletedAt !== undefined) return [];
  const word = words[table];
  if (table === "runs") {
    const left = await laps.undoRun(writer, edit as Edit & { table: "runs" });
    const run = (await writer.find("runs", edit.id)) as Run;
    if (left.length > 0 || run.laps.some(({ deletedAt }) => deletedAt === undefined))
      return [...left, `${word} has laps added since`];
  }
  const altered = differingFields(current, after ?? {}).filter(
    (field) => !unread.has(field) && field !== "endedAt",
  );
  if (altered.length > 0) return [`${word} has been changed since`];
  if (await isInUse(writer, table, edit.id)) return [`${word} is in use by now`];
  const now = (await writer.find(table, edit.id)) as Tables[typeof table];
  await writer.put(table, stampDeleted(now, writer.now));
  return [];
}
