import { type AllRows, type Id, type Stamped, type TableName, tableNames } from "#domain";
import { differingFields } from "./patch.ts";
import { type Place, places } from "./places.ts";
import { hasSeen, versionFields } from "./versions.ts";

/** A row or lap that differs between here and a file and was edited on both sides. */
export interface BothEdited {
  readonly table: TableName | "laps";
  readonly id: Id;
  readonly place: Place;
  /** Names of the fields that differ; `runId` for a lap that is in another run. */
  readonly fields: readonly string[];
  readonly here: Stamped;
  readonly there: Stamped;
  /** The side whose row a merge keeps. */
  readonly stays: "here" | "there";
}

const unsaid = new Set([...versionFields, "laps"]);

/**
 * The rows and laps that two copies of a logbook hold differently after both were edited. A row remembers the stamps it
 * had, so one that only one side edited is not among them (of rows the first schema wrote, one that was edited twice may
 * be); one that both edited never is missing. Pure.
 * @param merged what `mergeRows` makes of the two
 */
export function editedOnBoth(here: AllRows, there: AllRows, merged: AllRows): BothEdited[] {
  const placeOf = places(merged);
  const found: BothEdited[] = [];
  for (const table of [...tableNames, "laps"] as const) {
    const mine = new Map(rowsOf(here, table).map((row) => [row.id, row]));
    const kept = new Map(rowsOf(merged, table).map((row) => [row.id, row]));
    for (const row of rowsOf(there, table)) {
      const own = mine.get(row.id);
      if (own === undefined || !wereBothEdited(own, row)) continue;
      const fields = differingFields(own, row).filter((field) => !unsaid.has(field));
      const stays = kept.get(row.id);
      if (fields.length === 0 || stays === undefined) continue;
      const isMine = differingFields(stays, own).every((field) => unsaid.has(field));
      found.push({
        table,
        id: row.id,
        place: placeOf(table, row.id),
        fields,
        here: own,
        there: row,
        stays: isMine ? "here" : "there",
      });
    }
  }
  return found.sort((a, b) => ((a.place.date ?? "") < (b.place.date ?? "") ? 1 : -1));
}

/** Rows made apart under one fixed id, such as the preferences, were both edited by being made. */
function wereBothEdited(a: Stamped, b: Stamped): boolean {
  if (hasSeen(a, b) || hasSeen(b, a)) return false;
  if (a.updatedAt === b.updatedAt && a.deletedAt === b.deletedAt) return a.createdAt !== b.createdAt;
  if (a.deletedAt !== undefined && b.deletedAt !== undefined) return false;
  return a.createdAt !== b.createdAt || (a.updatedAt > a.createdAt && b.updatedAt > b.createdAt);
}

function rowsOf(rows: AllRows, table: TableName | "laps"): readonly Stamped[] {
  if (table !== "laps") return rows[table];
  return rows.runs.flatMap((run) => run.laps.map((lap) => ({ ...lap, runId: run.id })));
}
