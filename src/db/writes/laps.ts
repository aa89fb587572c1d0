import { type Id, type Lap, lapsInOrder, type Run } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import { overwrittenFields, type Patch } from "../patch.ts";
import type { Change } from "./change.ts";
import { rememberSectors } from "./rememberSectors.ts";
import { runsOf } from "./rowsOf.ts";
import { type Fields, stampChanged, stampDeleted, stampNew } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/** The fields of a new lap; without `n` it goes to the end of its run. */
export type NewLap = Omit<Fields<Lap>, "n"> & { readonly n?: number };
/** The fields of a lap that may be changed. */
export type LapPatch = Patch<Fields<Lap>>;

const gone =
  "Nothing was changed: the lap is no longer there. It may have been deleted or moved in another tab.";

/** The run's row with other laps. Its own stamps stay: they speak for the run's own fields only. */
function putLaps(writer: Writer, run: Run, laps: readonly Lap[]): Promise<void> {
  return writer.put("runs", { ...run, laps });
}

const lastPlace = (laps: readonly Lap[]) => laps.reduce((most, lap) => Math.max(most, lap.n), 0);

/** "Lap 4", by its place among the laps that are not deleted. */
function called(run: Run, lapId: Id): string {
  return `Lap ${lapsInOrder(run).findIndex((lap) => lap.id === lapId) + 1}`;
}

function lapOf(run: Run, lapId: Id): Lap {
  const lap = run.laps.find(({ id, deletedAt }) => id === lapId && deletedAt === undefined);
  if (lap === undefined) throw new LedgerFault("missing", gone);
  return lap;
}

/**
 * Adds a lap under the id made when the driver pressed Enter. A lap of this id anywhere in the session is left as it
 * is, so that trying again never makes a second one; the change then has no edits.
 */
export function addLap(
  book: Logbook,
  { runId, id, lap }: { readonly runId: Id; readonly id: Id; readonly lap: NewLap },
): Promise<Change> {
  return write(book, "Lap not stored", async (writer) => {
    const run = await writer.get("runs", runId);
    const runs = await runsOf(writer, run.sessionId);
    if (runs.some(({ laps }) => laps.some((known) => known.id === id)))
      return { what: "Lap already stored", edits: [] };
    const added = stampNew<Lap>({ n: lastPlace(run.laps) + 1, ...lap }, id, writer.now);
    const laps = [...run.laps, added];
    await putLaps(writer, run, laps);
    await rememberSectors(writer, run, [added]);
    return changeOf(writer, `${called({ ...run, laps }, id)} added`);
  });
}

/** Adds several laps in their order, all or none: what was pasted, after its preview. */
export function addLaps(
  book: Logbook,
  {
    runId,
    laps,
  }: { readonly runId: Id; readonly laps: readonly { readonly id: Id; readonly lap: NewLap }[] },
): Promise<Change> {
  return write(book, "Laps not stored", async (writer) => {
    const run = await writer.get("runs", runId);
    const known = new Set(run.laps.map(({ id }) => id));
    const from = lastPlace(run.laps) + 1;
    const added = laps
      .filter(({ id }) => !known.has(id))
      .map(({ id, lap }, index) => stampNew<Lap>({ n: from + index, ...lap }, id, writer.now));
    if (added.length > 0) await putLaps(writer, run, [...run.laps, ...added]);
    await rememberSectors(writer, run, added);
    return changeOf(writer, added.length === 1 ? "1 lap added" : `${added.length} laps added`);
  });
}

/** Changes named fields of a lap. `expected` is the lap as the driver saw it, to tell what was overwritten. */
export function editLap(
  book: Logbook,
  edit: { readonly runId: Id; readonly lapId: Id; readonly patch: LapPatch; readonly expected?: Lap },
): Promise<Change> {
  return changeLap(book, edit, "changed");
}

/** The driver says whether a lap may be a PB. */
export function setNotBest(
  book: Logbook,
  { runId, lapId, isNotBest }: { readonly runId: Id; readonly lapId: Id; readonly isNotBest: boolean },
): Promise<Change> {
  const patch = { isNotBest: isNotBest ? (true as const) : undefined };
  return changeLap(book, { runId, lapId, patch }, isNotBest ? "is not a PB" : "may be a PB");
}

function changeLap(
  book: Logbook,
  edit: { readonly runId: Id; readonly lapId: Id; readonly patch: LapPatch; readonly expected?: Lap },
  done: string,
): Promise<Change> {
  return write(book, "Lap not changed", async (writer) => {
    const run = await writer.get("runs", edit.runId);
    const lap = lapOf(run, edit.lapId);
    const changed = stampChanged<Lap>(lap, edit.patch, writer.now);
    const what = `${called(run, lap.id)} ${done}`;
    await putLaps(
      writer,
      run,
      run.laps.map((other) => (other === lap ? changed : other)),
    );
    if (edit.patch.sectors !== undefined) await rememberSectors(writer, run, [changed]);
    return changeOf(writer, what, overwrittenFields(lap, edit.patch, edit.expected));
  });
}

/** Marks a lap as deleted. */
export function deleteLap(
  book: Logbook,
  { runId, lapId }: { readonly runId: Id; readonly lapId: Id },
): Promise<Change> {
  return write(book, "Lap not deleted", async (writer) => {
    const run = await writer.get("runs", runId);
    const lap = lapOf(run, lapId);
    const what = `${called(run, lapId)} deleted`;
    await putLaps(
      writer,
      run,
      run.laps.map((other) => (other === lap ? stampDeleted(lap, writer.now) : other)),
    );
    return changeOf(writer, what);
  });
}
