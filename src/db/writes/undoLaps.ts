import type { Id, Lap, Run } from "#domain";
import { differingFields, fieldOf, isSame, type Patch } from "../patch.ts";
import { versionFields } from "../versions.ts";
import type { Edit } from "./change.ts";
import { stampChanged, stampDeleted } from "./stamp.ts";
import type { Writer } from "./writer.ts";

type RunEdit = Edit & { readonly table: "runs" };

/** Takes back what a change did to laps. */
export interface LapUndo {
  /** Takes back what was done to the laps of one run; gives what had to be left, in words. */
  readonly undoRun: (writer: Writer, edit: RunEdit) => Promise<string[]>;
}

const again = "a lap has been changed again since";
const lost = "a lap has been moved again since";

const lapsOf = (run: Run | undefined) => new Map((run?.laps ?? []).map((lap) => [lap.id, lap]));

/** Knows all edits of a change, because a lap that left one run came to another. */
export function undoLaps(edits: readonly Edit[]): LapUndo {
  const runEdits = edits.filter((edit): edit is RunEdit => edit.table === "runs");
  /** Run each lap left in this change, with the lap as it was there. */
  const cameFrom = new Map<Id, { readonly runId: Id; readonly lap: Lap }>();
  for (const { id, before, after } of runEdits)
    for (const [lapId, lap] of lapsOf(before))
      if (!lapsOf(after).has(lapId)) cameFrom.set(lapId, { runId: id, lap });

  const undoRun: LapUndo["undoRun"] = async (writer, { id, before, after }) => {
    const run = await writer.find("runs", id);
    if (run === undefined) return [];
    const [old, made, now] = [lapsOf(before), lapsOf(after), lapsOf(run)];
    const skipped: string[] = [];
    for (const [lapId, then] of made) {
      const current = now.get(lapId);
      const was = old.get(lapId);
      const home = cameFrom.get(lapId);
      if (was !== undefined && isSame(was, then)) continue;
      if (current === undefined) skipped.push(lost);
      else if (was !== undefined) now.set(lapId, lapBack(writer, current, was, then, skipped));
      else if (home === undefined) now.set(lapId, newLapBack(writer, current, then, skipped));
      else if (await goHome(writer, home, current, then, skipped)) now.delete(lapId);
    }
    await putLaps(writer, id, [...now.values()]);
    return skipped;
  };
  return { undoRun };
}

async function putLaps(writer: Writer, runId: Id, laps: readonly Lap[]): Promise<void> {
  const run = await writer.find("runs", runId);
  if (run) await writer.put("runs", { ...run, laps });
}

/** A changed lap with the fields put back that nobody altered since. */
function lapBack(writer: Writer, current: Lap, was: Lap, then: Lap, skipped: string[]): Lap {
  const changed = differingFields(was, then).filter((field) => !versionFields.has(field));
  const free = changed.filter((field) => isSame(fieldOf(current, field), fieldOf(then, field)));
  if (changed.length > free.length) skipped.push(again);
  if (free.length === 0) return current;
  const patch = Object.fromEntries(free.map((field) => [field, fieldOf(was, field)]));
  return stampChanged(current, patch as Patch<Lap>, writer.now);
}

/** A new lap marked as deleted, unless somebody altered it since. */
function newLapBack(writer: Writer, current: Lap, then: Lap, skipped: string[]): Lap {
  if (current.deletedAt !== undefined && then.deletedAt === undefined) return current;
  if (differingFields(current, then).some((field) => !versionFields.has(field))) {
    skipped.push(again);
    return current;
  }
  return stampDeleted(current, writer.now);
}

/** Brings a moved lap back to its old run and place, with what was altered in it since. */
async function goHome(
  writer: Writer,
  home: { readonly runId: Id; readonly lap: Lap },
  current: Lap,
  then: Lap,
  skipped: string[],
): Promise<boolean> {
  const run = await writer.find("runs", home.runId);
  if (run === undefined || run.deletedAt !== undefined) {
    skipped.push("the run a lap came from has been deleted since");
    return false;
  }
  const lap = stampChanged<Lap>(current, { n: current.n === then.n ? home.lap.n : current.n }, writer.now);
  await writer.put("runs", { ...run, laps: [...run.laps, lap] });
  return true;
}
