import { type AllRows, type Id, type TableName, tableNames } from "#domain";
import { checkRow } from "./checkRow.ts";
import { parentsOf } from "./parentsOf.ts";

/** A row that cannot be taken. */
export interface BadRow {
  readonly table: string;
  /** Its place in the table, from 1. */
  readonly place: number;
  readonly why: string;
}

export interface CheckedRows {
  readonly rows: AllRows;
  readonly bad: readonly BadRow[];
}

/**
 * Sorts the rows of a file into those that can be taken and those that cannot, each with its reason: wrong values,
 * the same id twice, a parent that is not there, an unknown table.
 * @param known ids of rows that are there already, where the file is merged into a logbook
 */
export function checkRows(
  tables: Readonly<Record<string, readonly unknown[]>>,
  known: ReadonlySet<Id> = new Set(),
): CheckedRows {
  const bad: BadRow[] = [];
  for (const [table, rows] of Object.entries(tables))
    if (!(tableNames as readonly string[]).includes(table) && rows.length > 0)
      bad.push({ table, place: 1, why: "no table of a logbook has this name" });

  const places = new Map<object, number>();
  const ids = new Set<Id>(known);
  const lapIds = new Set<Id>();
  const taken = Object.fromEntries(
    tableNames.map((table) => [
      table,
      wellFormed(table, Object.hasOwn(tables, table) ? (tables[table] ?? []) : []),
    ]),
  ) as { [T in TableName]: AllRows[T][number][] };

  function wellFormed(table: TableName, rows: readonly unknown[]): object[] {
    const seen = new Set<Id>();
    return rows.flatMap((row, index) => {
      const place = index + 1;
      const checked = checkRow(table, row);
      const why = checked.ok
        ? seen.has(checked.row.id)
          ? "the same id twice"
          : lapTwice(checked.row)
        : checked.why;
      if (!checked.ok || why !== undefined) {
        bad.push({ table, place, why: why ?? "" });
        return [];
      }
      seen.add(checked.row.id);
      places.set(checked.row, place);
      return [checked.row];
    });
  }

  function lapTwice(row: object): string | undefined {
    if (!("laps" in row) || !Array.isArray(row.laps)) return undefined;
    const own: Id[] = row.laps.map((lap: { readonly id: Id }) => lap.id);
    if (new Set(own).size < own.length || own.some((lapId) => lapIds.has(lapId)))
      return "a lap with the same id twice";
    for (const lapId of own) lapIds.add(lapId);
    return undefined;
  }

  // Parents stand before their children in the order of tables, so one pass is enough.
  for (const table of tableNames) {
    const kept = (taken[table] as AllRows[TableName][number][]).filter((row) => {
      const missing = parentsOf(table, row).find(({ id }) => !ids.has(id));
      if (missing) bad.push({ table, place: places.get(row) ?? 0, why: `its ${missing.word} is not there` });
      return missing === undefined;
    });
    for (const { id } of kept) ids.add(id);
    Object.assign(taken, { [table]: kept });
  }
  return { rows: taken, bad };
}
