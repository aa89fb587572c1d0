import type { Id, Run, Stamped, TableName } from "#domain";
import { type NamedRow, rowsNamed } from "./rowsNamed.ts";

/** The table each id stands in. */
export type Homes = ReadonlyMap<Id, TableName | "laps">;

/** What keeps a well-formed row from its table: its own id, or a row that it names. */
export interface LinkFault {
  readonly why: string;
  /** The link that is wrong; absent where the row's own id or a lap's is. */
  readonly link?: NamedRow;
}

/**
 * Why a well-formed row does not fit among others, or undefined. An id stands in one table only, and what a row names is
 * in the right one; what it can be without may be nowhere, but not in another table.
 * @param homes where each id is at home, those of this row and its laps too
 * @param isThere whether a table holds the row; one with a home may itself have been left out
 */
export function linkFault(
  table: TableName,
  row: Stamped,
  homes: Homes,
  isThere: (to: TableName, id: Id) => boolean,
): LinkFault | undefined {
  if (homes.get(row.id) !== table) return { why: "its id is that of another row" };
  if (table === "runs" && (row as Run).laps.some(({ id }) => homes.get(id) !== "laps"))
    return { why: "a lap with the id of a row" };
  for (const link of rowsNamed(table, row)) {
    const { id, to, word, isLoose } = link;
    const home = homes.get(id);
    if (home !== undefined && home !== to) return { why: `its ${word} is a row of another table`, link };
    if (!isLoose && !isThere(to, id)) return { why: `its ${word} is not there`, link };
  }
  return undefined;
}
