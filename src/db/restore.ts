import { type AllRows, type Stamped, tableNames } from "#domain";
import { faultOf, LedgerFault } from "./fault.ts";
import { type Logbook, type OpenOptions, openLogbook } from "./logbook.ts";
import { nativeVersion } from "./nativeVersion.ts";
import { deleteDatabase } from "./shelvedLogbooks.ts";
import { freshMark } from "./writes/markDigests.ts";

const rowsAtOnce = 2000;

export interface RestoreOptions extends Pick<OpenOptions, "clock" | "newId"> {
  /** Name of a database that is not there yet. */
  readonly name: string;
  /** Called after each part with the rows stored so far and all there are. */
  readonly onProgress?: (done: number, all: number) => void;
  readonly signal?: AbortSignal;
}

/**
 * Stores rows as a new logbook, in transactions of 2,000 rows, so that progress can be shown and the work cancelled.
 * All or nothing: on cancel (fault `cancelled`) or failure the new database is deleted again.
 * @param rows rows that have been through `checkRows`
 */
export async function restoreAsNew(rows: AllRows, options: RestoreOptions): Promise<Logbook> {
  const { name, signal, onProgress } = options;
  if ((await nativeVersion(name)) !== undefined)
    throw new LedgerFault("invalid", "Not restored: a logbook of this name is there already.");
  const book = await openLogbook(options);
  try {
    const all = tableNames.reduce((sum, table) => sum + rows[table].length, 0);
    let done = 0;
    for (const table of tableNames)
      for (const part of partsOf<Stamped>(rows[table])) {
        stopIf(signal);
        await book.database.table(table).bulkAdd([...part]);
        done += part.length;
        onProgress?.(done, all);
      }
    for (const part of partsOf(rows.sessions.filter(({ deletedAt }) => deletedAt === undefined))) {
      stopIf(signal);
      await book.database
        .table("digests")
        .bulkAdd(part.map((session) => freshMark(session, options.clock())));
    }
    stopIf(signal);
    return book;
  } catch (error) {
    book.close();
    await deleteDatabase(name);
    throw faultOf(error, "Backup not restored");
  }
}

function partsOf<R>(rows: readonly R[]): (readonly R[])[] {
  return Array.from({ length: Math.ceil(rows.length / rowsAtOnce) }, (_, index) =>
    rows.slice(index * rowsAtOnce, (index + 1) * rowsAtOnce),
  );
}

function stopIf(signal: AbortSignal | undefined): void {
  if (signal?.aborted) throw new LedgerFault("cancelled", "Restore cancelled; nothing was changed.");
}
