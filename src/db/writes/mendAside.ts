import {
  type AsideRow,
  type Id,
  type Lap,
  type Run,
  settledAside,
  type TableName,
  tableNames,
} from "#domain";
import { checkRow } from "../checks/checkRow.ts";
import { rowsNamed } from "../checks/rowsNamed.ts";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import { migrateRows } from "../migrations/migrateRows.ts";
import type { Change } from "./change.ts";
import { stampChanged } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

type Fields = Readonly<Record<string, unknown>>;

/** What still keeps a row that was set aside from its table. */
export interface AsideFault {
  /** The field that is wrong, by its path: "laps.3.ms". Absent where it is the row as a whole. */
  readonly field?: string;
  readonly why: string;
}

/** What is wrong with a row set aside, corrected or not, by the full check; undefined when it could stand in its table. */
export function asideFault(aside: AsideRow, row: Fields): AsideFault | undefined {
  const judged = judge(aside, row);
  return "why" in judged ? judged : undefined;
}

/** A run around a lap, so that a lap is checked and migrated as what it is. */
const runAround = (lap: Fields, schema: number) => {
  const id = "00000000-0000-7000-8000-000000000000";
  const run = { id, sessionId: id, comboId: id, n: 1, startedAt: 0, note: "", createdAt: 0, updatedAt: 0 };
  const whole = { ...run, kind: "pace", effort: "full", surface: "dry", laps: [lap] };
  return migrateRows({ runs: [whole] }, schema);
};

function judge({ table, schema }: AsideRow, row: Fields): AsideFault | { readonly row: Fields } {
  const { runId: _, ...lap } = row;
  const isLap = table === "laps";
  if (!isLap && !(tableNames as readonly string[]).includes(table))
    return { why: "this version has no place for it" };
  const tables = isLap ? runAround(lap, schema) : migrateRows({ [table]: [row] }, schema);
  const [failed] = tables["aside"] ?? [];
  if (failed !== undefined) return { why: String(failed["why"]) };
  const [migrated] = tables[isLap ? "runs" : table] ?? [];
  if (migrated === undefined) return { why: "this version has no place for it any more" };
  const checked = checkRow((isLap ? "runs" : table) as TableName, migrated);
  if (checked.ok) return { row: isLap ? ((checked.row as Run).laps[0] as unknown as Fields) : migrated };
  const [, field, why] = /^(?:laps\.0\.)?([\w.]+): (.*)$/s.exec(checked.why) ?? [];
  return field === undefined || why === undefined ? { why: checked.why } : { field, why };
}

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
    const judged = judge(aside, row);
    if ("why" in judged) throw refuse(judged.field ? `${judged.field}: ${judged.why}` : judged.why);
    if (aside.table === "laps") await putLap(writer, row["runId"] as Id, judged.row as unknown as Lap);
    else await putRow(writer, aside.table as TableName, judged.row);
    await settle(writer, aside);
    if (aside.table !== "laps") await putBackChildren(writer, judged.row["id"] as Id);
    return changeOf(writer, "Put back");
  });
}

/** What went aside only because this row was not there comes back with it, and what hangs on that. */
async function putBackChildren(writer: Writer, parent: Id): Promise<void> {
  const all = await writer.transaction.table<AsideRow, Id>("aside").toArray();
  for (const aside of all) {
    if (aside.row === undefined || aside.table === "laps") continue;
    const judged = judge(aside, aside.row);
    const table = aside.table as TableName;
    if ("why" in judged || !rowsNamed(table, judged.row).some(({ id }) => id === parent)) continue;
    if ((await whyNotPut(writer, table, judged.row)) !== undefined) continue;
    await putRow(writer, table, judged.row);
    await settle(writer, aside);
    await putBackChildren(writer, judged.row["id"] as Id);
  }
}

async function whyNotPut(writer: Writer, table: TableName, row: Fields): Promise<string | undefined> {
  for (const { to, id, word, isLoose } of rowsNamed(table, row))
    if (!isLoose && (await writer.find(to, id)) === undefined) return `its ${word} is not there`;
  const there = await writer.find(table, row["id"] as Id);
  return there === undefined ? undefined : "another version of it stands in its place by now";
}

async function putRow(writer: Writer, table: TableName, row: Fields): Promise<void> {
  const why = await whyNotPut(writer, table, row);
  if (why !== undefined) throw refuse(why);
  await writer.put(table, stampChanged(row as never, {}, writer.now));
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
