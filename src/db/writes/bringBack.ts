import type { Id, Run, Session, Stamped, TableName, Tables } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Patch } from "../patch.ts";
import { deletionAsSaid } from "../versions.ts";
import type { Change } from "./change.ts";
import { runsOf } from "./rowsOf.ts";
import { stampChanged } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

/**
 * Brings back a deleted row; a session with the runs that were deleted with it, a run with its session, and either with
 * its car, track and layout, which go with a session whose start is taken back.
 */
export function bringBack(
  book: Logbook,
  { table, id }: { readonly table: TableName; readonly id: Id },
): Promise<Change> {
  return write(book, "Not brought back", async (writer) => {
    const row = await writer.find(table, id);
    if (row === undefined)
      throw new LedgerFault("missing", "Not brought back: it has been deleted for good.");
    const runs = table === "sessions" ? await runsOf(writer, id) : [];
    await undelete(writer, table, id);
    for (const run of runs) if (wentWith(run, row)) await undelete(writer, "runs", run.id);
    if (table === "runs") await undelete(writer, "sessions", (row as Run).sessionId);
    if (table === "runs" || table === "sessions") await undeleteCombo(writer, (row as Run | Session).comboId);
    return changeOf(writer, "Brought back");
  });
}

/** Stamps may run one ahead of the clock, so runs deleted with their session can differ by a little. */
function wentWith(run: Run, session: Stamped): boolean {
  const [mine, its] = [deletionAsSaid(run), deletionAsSaid(session)];
  return mine !== undefined && its !== undefined && Math.abs(mine - its) < 1000;
}

async function undeleteCombo(writer: Writer, comboId: Id): Promise<void> {
  const combo = await writer.find("combos", comboId);
  const layout = combo && (await writer.find("layouts", combo.layoutId));
  await undelete(writer, "combos", comboId);
  if (combo) await undelete(writer, "cars", combo.carId);
  if (layout) {
    await undelete(writer, "layouts", layout.id);
    await undelete(writer, "tracks", layout.trackId);
  }
}

async function undelete(writer: Writer, table: TableName, id: Id): Promise<void> {
  const row = await writer.find(table, id);
  if (row === undefined || row.deletedAt === undefined) return;
  const patch: Patch<{ readonly deletedAt?: number }> = { deletedAt: undefined };
  await writer.put(table, stampChanged(row, patch as Patch<Tables[TableName]>, writer.now));
}

/** Brings back one deleted lap. */
export function bringBackLap(
  book: Logbook,
  { runId, lapId }: { readonly runId: Id; readonly lapId: Id },
): Promise<Change> {
  return write(book, "Lap not brought back", async (writer) => {
    const run = await writer.get("runs", runId);
    const laps = run.laps.map((lap) =>
      lap.id === lapId ? stampChanged(lap, { deletedAt: undefined }, writer.now) : lap,
    );
    await writer.put("runs", { ...run, laps });
    return changeOf(writer, "Lap brought back");
  });
}
