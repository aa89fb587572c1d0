import { dump, LedgerFault, type ReadOnlyLogbook } from "#db";
import { type AllRows, practiceDay } from "#domain";
import { type CsvTable, fileName, lapsTable, rigsTable, saveFile, sessionsTable, targetsTable } from "#files";
import type { OpenLogbook } from "#live";
import { useNotices } from "#state/notices.ts";
import { sessionCounts } from "./sessionCounts.ts";

const tables = {
  laps: lapsTable,
  sessions: (rows: AllRows) => sessionsTable(rows, sessionCounts),
  targets: targetsTable,
  rig: rigsTable,
} as const;
export type Exported = keyof typeof tables;

interface Wanted {
  readonly book: ReadOnlyLogbook;
  readonly surroundings: OpenLogbook["surroundings"];
  readonly title: string;
  readonly what: Exported;
  readonly write: (table: CsvTable) => string;
}

/** Hands a table of the open logbook to the browser's downloads; a fault is told in a notice. */
export async function saveTable(wanted: Wanted): Promise<void> {
  const { book, surroundings, title, what, write } = wanted;
  const { say } = useNotices.getState();
  try {
    const rows: AllRows = await dump(book);
    const table = tables[what](rows);
    const { clock, zone } = surroundings;
    const file = fileName(`${title} ${what}`, practiceDay(clock(), zone(), 0), "csv");
    saveFile(file, write(table), "text/csv");
    const count = table.length - 1;
    const text = `${count.toLocaleString("en")} ${count === 1 ? "row" : "rows"} handed to this browser’s downloads as ${file}.`;
    say({ kind: "done", text, actions: [] });
  } catch (error) {
    if (!(error instanceof LedgerFault)) throw error;
    say({
      kind: "fault",
      text: error.message,
      actions: [{ name: "Try again", run: () => void saveTable(wanted) }],
    });
  }
}
