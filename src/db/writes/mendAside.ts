import {
  type AsideRow,
  type Id,
  type Lap,
  type Stamped,
  settledAside,
  type TableName,
  tableNames,
} from "#domain";
import { linkFault } from "../checks/linkFault.ts";
import { rowsNamed } from "../checks/rowsNamed.ts";
import { LedgerFault } from "../fault.ts";
import { enterHome, homesThere, type Placed } from "../homesThere.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { judgeAside } from "./judgeAside.ts";
import { stampChanged } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

type Fields = Readonly<Record<string, unknown>>;

const notPut = "Not put back";
const refuse = (why: string) => new LedgerFault("invalid", `${notPut}: ${why}.`);

/**
 * Puts a row that was set aside into its table again, as the driver has corrected it. Throws LedgerFault, `invalid` with what is
 * still wrong: a field, a row it belongs to that is not there, or another version of it that stands in its place by now.
 */
export function mendAside(
  book: Logbook,
  { aside, row }: { readonly aside: AsideRow; readonly row: Fields },
): Promise<Change> {
  return write(book, notPut, async (writer) => {
    const judged = judgeAside(aside, row);
    if ("why" in judged) throw refuse(judged.field ? `${judged.field}: ${judged.why}` : judged.why);
    if (aside.table === "laps") await putLap(writer, row["runId"] as Id, judged.row as unknown as Lap);
    else {
      const placed = { table: aside.table as TableName, row: judged.row as unknown as Stamped };
      const waiting = await waitingRows(writer, aside);
      const coming = { writer, homes: await homesThere(book.tables, [placed, ...waiting]) };
      await putRow(coming, placed);
      await putBackChildren(coming, placed.row.id, waiting);
    }
    await settle(writer, aside);
    return changeOf(writer, "Put back");
  });
}

/** Rows that go back into their tables in one write, and where all that they name is at home. */
interface Coming {
  readonly writer: Writer;
  readonly homes: Awaited<ReturnType<typeof homesThere>>;
}

interface Waiting extends Placed {
  readonly aside: AsideRow;
}

/** What waits aside and is right by itself, parents before their children as the tables stand. */
async function waitingRows(writer: Writer, but: AsideRow): Promise<Waiting[]> {
  const all = await writer.transaction.table<AsideRow, Id>("aside").toArray();
  return all
    .flatMap((aside) => {
      if (aside.row === undefined || aside.table === "laps" || aside.id === but.id) return [];
      const judged = judgeAside(aside, aside.row);
      if ("why" in judged) return [];
      return [{ aside, table: aside.table as TableName, row: judged.row as unknown as Stamped }];
    })
    .sort((a, b) => tableNames.indexOf(a.table) - tableNames.indexOf(b.table));
}

/** What went aside only because this row was not there comes back with it, and what hangs on that. */
async function putBackChildren(coming: Coming, parent: Id, waiting: readonly Waiting[]): Promise<void> {
  const back = new Set([parent]);
  for (const { aside, ...placed } of waiting) {
    const isChild = rowsNamed(placed.table, placed.row).some(({ id }) => back.has(id));
    if (!isChild || whyNotPut(coming, placed) !== undefined) continue;
    await putRow(coming, placed);
    await settle(coming.writer, aside);
    back.add(placed.row.id);
  }
}

function whyNotPut({ homes }: Coming, placed: Placed): string | undefined {
  const { table, row } = placed;
  if (homes.get(row.id) === table) return "another version of it stands in its place by now";
  const own = new Map(homes);
  enterHome(own, placed);
  return linkFault(table, row, own, (to, id) => homes.get(id) === to)?.why;
}

async function putRow(coming: Coming, placed: Placed): Promise<void> {
  const why = whyNotPut(coming, placed);
  if (why !== undefined) throw refuse(why);
  await coming.writer.put(placed.table, stampChanged(placed.row as never, {}, coming.writer.now));
  enterHome(coming.homes, placed);
}

async function putLap(writer: Writer, runId: Id, lap: Lap): Promise<void> {
  const run = await writer.find("runs", runId);
  if (run === undefined) throw refuse("its run is not there");
  if (run.laps.some(({ id }) => id === lap.id))
    throw refuse("another version of it stands in its place by now");
  await writer.put("runs", { ...run, laps: [...run.laps, stampChanged(lap, {}, writer.now)] });
}

/** Deletes a row that was set aside for good; it does not come back with an older copy. Cannot be undone. */
export function dropAside(book: Logbook, aside: AsideRow): Promise<Change> {
  return write(book, "Not deleted", async (writer) => {
    await settle(writer, aside);
    return changeOf(writer, "Deleted for good");
  });
}

async function settle(writer: Writer, aside: AsideRow): Promise<void> {
  const table = writer.transaction.table<AsideRow, Id>("aside");
  if ((await table.get(aside.id))?.row === undefined)
    throw new LedgerFault("missing", "Nothing was changed: the row is no longer set aside.");
  await table.put(settledAside(aside));
}
