import { type AllRows, type Session, type Stamped, type TableName, tableNames } from "#domain";
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
  const { database, clock } = book;
  const all = tableNames.reduce((sum, table) => sum + rows[table].length, 0);
  let done = 0;
  const store = async (table: TableName, part: readonly Stamped[]) => {
    await database.table(table).bulkAdd([...part]);
    done += part.length;
    onProgress?.(done, all);
  };
  const mark = (part: readonly Session[]) =>
    database.table("digests").bulkAdd(part.map((session) => freshMark(session, clock())));
  function* steps() {
    for (const table of tableNames)
      for (const part of partsOf<Stamped>(rows[table])) yield () => store(table, part);
    for (const part of partsOf(rows.aside ?? [])) yield () => database.table("aside").bulkAdd([...part]);
    const live = rows.sessions.filter(({ deletedAt }) => deletedAt === undefined);
    for (const part of partsOf(live)) yield () => mark(part);
  }
  try {
    await twoAtATime(steps(), signal);
    return book;
  } catch (error) {
    book.close();
    await deleteDatabase(name);
    throw faultOf(error, "Backup not restored");
  }
}

/**
 * While the browser writes one part, the next is handed over. A step that fails ends the generator and so the other lane
 * too; nothing is under way any more when this ends.
 */
async function twoAtATime(
  steps: Generator<() => Promise<unknown>>,
  signal: AbortSignal | undefined,
): Promise<void> {
  const lane = async () => {
    for (const step of steps) {
      stopIf(signal);
      await step();
    }
  };
  const lanes = await Promise.allSettled([lane(), lane()]);
  for (const ended of lanes) if (ended.status === "rejected") throw ended.reason;
  stopIf(signal);
}

function stopIf(signal: AbortSignal | undefined): void {
  if (signal?.aborted) throw new LedgerFault("cancelled", "Stopped; nothing was changed.");
}

function partsOf<R>(rows: readonly R[]): (readonly R[])[] {
  return Array.from({ length: Math.ceil(rows.length / rowsAtOnce) }, (_, index) =>
    rows.slice(index * rowsAtOnce, (index + 1) * rowsAtOnce),
  );
}
