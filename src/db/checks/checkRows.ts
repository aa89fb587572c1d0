import {
  type AllRows,
  everyTable,
  type Id,
  noRows,
  type Run,
  type Stamped,
  type TableName,
  tableNames,
} from "#domain";
import { afterTomorrow } from "./afterTomorrow.ts";
import type { BadRow } from "./badRow.ts";
import { checkRow } from "./checkRow.ts";
import { idsOf, type KnownIds, linkedRows } from "./linkedRows.ts";

export interface CheckedRows {
  readonly rows: AllRows;
  readonly bad: readonly BadRow[];
}

/** What is known around the rows of a file. */
export interface Around {
  /** Rows that are there already, where the file is merged into a logbook. */
  readonly known?: KnownIds;
  /** This device's clock, epoch ms; without it no row is asked whether it can have happened yet. */
  readonly now?: number;
}

/**
 * Sorts the rows of a file into those that can be taken and those that cannot, each with its reason: wrong values,
 * the same id twice, a named row that is not there or in another table, days yet to come, an unknown table.
 */
export function checkRows(
  tables: Readonly<Record<string, readonly unknown[]>>,
  { known = idsOf(noRows), now }: Around = {},
): CheckedRows {
  const bad: BadRow[] = [];
  for (const [table, rows] of Object.entries(tables))
    if (table !== "aside" && !(tableNames as readonly string[]).includes(table))
      for (const [index, row] of rows.entries())
        bad.push({ table, place: index + 1, why: "no table of a logbook has this name", row });

  const places = new Map<object, number>();
  const lapIds = new Set<Id>();
  const rows = everyTable((table) =>
    wellFormed(table, Object.hasOwn(tables, table) ? (tables[table] ?? []) : []),
  ) as unknown as AllRows;

  function wellFormed(table: TableName, list: readonly unknown[]): object[] {
    const seen = new Set<Id>();
    return list.flatMap((row, index) => {
      const place = index + 1;
      const checked = checkRow(table, row);
      const why = checked.ok ? whyNot(table, checked.row, seen) : checked.why;
      if (!checked.ok || why !== undefined) {
        bad.push({ table, place, why: why ?? "", row });
        return [];
      }
      seen.add(checked.row.id);
      places.set(checked.row, place);
      return [checked.row];
    });
  }

  function whyNot(table: TableName, row: Stamped, seen: ReadonlySet<Id>): string | undefined {
    if (seen.has(row.id)) return "the same id twice";
    const late = now === undefined ? undefined : afterTomorrow(table, row, now);
    return late ?? (table === "runs" ? lapTwice(row as Run) : undefined);
  }

  function lapTwice({ laps }: Run): string | undefined {
    const own = laps.map(({ id }) => id);
    if (new Set(own).size < own.length || own.some((lapId) => lapIds.has(lapId)))
      return "a lap with the same id twice";
    for (const lapId of own) lapIds.add(lapId);
    return undefined;
  }

  const linked = linkedRows(rows, known, (table, row, why) =>
    bad.push({ table, place: places.get(row) ?? 0, why, row }),
  );
  return { rows: linked, bad };
}

/** Rows that are right among themselves, sorted by whether they fit beside those of a logbook. */
export function checkBeside(checked: AllRows, here: AllRows): CheckedRows {
  const bad: BadRow[] = [];
  const rows = linkedRows(checked, idsOf(here), (table, row, why) => {
    const place = (checked[table] as readonly Stamped[]).indexOf(row) + 1;
    bad.push({ table, place, why, row });
  });
  return { rows, bad };
}
