import { type AsideRow, type Run, type Stamped, type TableName, tableNames } from "#domain";
import { checkRow, type RowFault } from "../checks/checkRow.ts";
import { type LinkFault, linkFault } from "../checks/linkFault.ts";
import { enterHome, homesThere } from "../homesThere.ts";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { migrateRows } from "../migrations/migrateRows.ts";

type Fields = Readonly<Record<string, unknown>>;

/** What is wrong with a row set aside, corrected or not, by the full check; undefined when it could stand in its table. */
export function asideFault(aside: AsideRow, row: Fields): RowFault | undefined {
  const judged = judgeAside(aside, row);
  return "why" in judged ? judged : undefined;
}

/** A run around a lap, so that a lap is checked and migrated as what it is. */
const runAround = (lap: Fields, schema: number) => {
  const id = "00000000-0000-7000-8000-000000000000";
  const run = { id, sessionId: id, comboId: id, n: 1, startedAt: 0, note: "", createdAt: 0, updatedAt: 0 };
  const whole = { ...run, kind: "pace", effort: "full", surface: "dry", laps: [lap] };
  return migrateRows({ runs: [whole] }, schema);
};

/** A field's path inside the lap, from that inside the run around it. */
const pathInLap = (field: string) => (field.startsWith(aroundLap) ? field.slice(aroundLap.length) : field);
const aroundLap = "laps.0.";

/** A row set aside as this version has it, or what is wrong with it by itself. */
export function judgeAside({ table, schema }: AsideRow, row: Fields): RowFault | { readonly row: Fields } {
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
  const { field, why } = checked.fault;
  return field === undefined ? { why } : { field: isLap ? pathInLap(field) : field, why };
}

/** A link of a row set aside that leads nowhere, or into a wrong table. */
export interface AsideLinkFault extends LinkFault {
  /** Whether what it names is set aside itself: put back, that brings this row along. */
  readonly isNamedAside: boolean;
}

/**
 * What keeps a row set aside, that is right by itself, from standing among those of the logbook: the rule by which files are
 * taken. Undefined when nothing does, and while something else is wrong with it; a lap names nothing but its run.
 */
export async function asideLinkFault(
  book: ReadOnlyLogbook,
  aside: AsideRow,
  row: Fields,
): Promise<AsideLinkFault | undefined> {
  const judged = judgeAside(aside, row);
  if ("why" in judged || aside.table === "laps") return undefined;
  const placed = { table: aside.table as TableName, row: judged.row as unknown as Stamped };
  const homes = await homesThere(book.tables, [placed]);
  enterHome(homes, placed);
  const fault = linkFault(placed.table, placed.row, homes, (to, id) => homes.get(id) === to);
  if (fault === undefined) return undefined;
  const { link } = fault;
  const named = await book.aside
    ?.toCollection()
    .filter((other) => isRow(other, link))
    .first();
  return { ...fault, isNamedAside: link !== undefined && named !== undefined };
}

const isRow = ({ table, row }: AsideRow, link: LinkFault["link"]) =>
  link !== undefined && table === link.to && row?.["id"] === link.id;
