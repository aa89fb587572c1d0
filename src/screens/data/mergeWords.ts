import type { Preview } from "#live";
import type { Row } from "#ui/RuledTable.tsx";
import { heldTables, tableWord } from "./backupRows.ts";

/** What a merge does, one line a table; tables it leaves alone are left out. */
export function mergeRowsInWords(counts: Preview["merging"]["counts"]): Row[] {
  return heldTables.flatMap((table) => {
    const { added, changed, deleted, broughtBack, unchanged } = counts[table];
    if (added + changed + deleted + broughtBack === 0) return [];
    const cells = { added, changed, deleted, broughtBack };
    const shown = Object.fromEntries(
      Object.entries(cells).map(([key, count]) => [key, count === 0 ? "" : count]),
    );
    return [{ id: table, cells: { what: tableWord(table), ...shown, unchanged } }];
  });
}
