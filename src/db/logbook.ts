import { Dexie, type Table } from "dexie";
import {
  type AsideRow,
  everyTable,
  type Id,
  type Stamped,
  type TableName,
  type Tables,
  tableNames,
} from "#domain";
import { type ChangeMark, derivedTables, type KeptAnswer } from "./derived.ts";
import { asideMends } from "./edge/asideMends.ts";
import { checkReads } from "./edge/checkReads.ts";
import { derivedMends } from "./edge/derivedMends.ts";
import { markChanges } from "./edge/markChanges.ts";
import { mendReads } from "./edge/mendReads.ts";
import { faultOf, LedgerFault } from "./fault.ts";
import { declareSchemas } from "./migrations/declareSchemas.ts";
import { newestSchema } from "./migrations/migrations.ts";
import { nativeVersion } from "./nativeVersion.ts";
import { readAround } from "./readAround.ts";
import { type LogbookStatus, makeStatus, type StatusSource } from "./status.ts";
import type { StoredDigest } from "./storedDigest.ts";
import { makeUnreadable, type UnreadableSource } from "./unreadable.ts";

type Reading = "get" | "bulkGet" | "where" | "orderBy" | "toArray" | "toCollection" | "count";
/** A table as reads see it. */
export type ReadTable<R> = Pick<Table<R, Id>, Reading>;

/** An open logbook that no write accepts. */
export interface ReadOnlyLogbook {
  readonly name: string;
  readonly status: StatusSource;
  /** Rows that reads went around: the browser could not give them, or they hold something that cannot be right. */
  readonly unreadable: UnreadableSource;
  readonly tables: { readonly [T in TableName]: ReadTable<Tables[T]> };
  readonly digests: ReadTable<StoredDigest>;
  /** What tells of changes, and answers that were computed; absent where a newer version keeps none. */
  readonly changeMarks?: ReadTable<ChangeMark>;
  readonly keptAnswers?: ReadTable<KeptAnswer>;
  /** What could not stand in its table; absent where a newer version keeps none. */
  readonly aside?: ReadTable<AsideRow>;
  /** The schema its rows are in: this version's own, or a newer one. */
  readonly schema: number;
  /** Tables that only a newer version knows, so that a backup loses none of them. */
  readonly unknownTables: Readonly<Record<string, ReadTable<Stamped>>>;
  readonly close: () => void;
}

/** An open logbook, with the clock and the id maker its writes use. */
export interface Logbook extends ReadOnlyLogbook {
  readonly clock: () => number;
  readonly newId: () => Id;
  /** For the writes of this room only. */
  readonly database: Dexie;
}

export interface OpenOptions {
  readonly name: string;
  /** Epoch milliseconds. */
  readonly clock: () => number;
  readonly newId: () => Id;
  /** `old`: it must be there already, or the fault `gone` is thrown and nothing is made. Default `any`. */
  readonly expect?: "any" | "old";
  /** Called at each change of status, also before the logbook is open (another tab blocks the upgrade). */
  readonly onStatus?: (status: LogbookStatus) => void;
}

const gone = "The stored logbook has disappeared from this browser. Restore a backup; nothing new was begun.";
const upgraded = "Lap Ledger was updated in another tab. Reload this page; typed text is kept.";
const newer =
  "This logbook was last used by a newer version of Lap Ledger. Reload to get it. It can be read and backed up here, not written.";

/**
 * Opens a logbook, making or migrating its database where needed; durability is strict. Throws LedgerFault: `newer`
 * when it was written by a newer version (mode `read` opens it all the same where it can), `gone`, `refused`, `failed`. When another
 * tab upgrades or deletes it, or the browser loses it, `status` says so and every write is refused.
 */
export function openLogbook(options: OpenOptions & { readonly mode: "read" }): Promise<ReadOnlyLogbook>;
export function openLogbook(options: OpenOptions & { readonly mode?: "write" }): Promise<Logbook>;
export async function openLogbook(
  options: OpenOptions & { readonly mode?: "read" | "write" },
): Promise<ReadOnlyLogbook | Logbook> {
  const { name, mode = "write", expect = "any", clock, newId } = options;
  const status = makeStatus();
  status.subscribe(() => options.onStatus?.(status.get()));
  const stored = await nativeVersion(name).catch((error: unknown) => {
    throw faultOf(error, "Logbook not opened");
  });
  const mustExist = expect === "old" || mode === "read";
  if (stored === undefined && mustExist) throw new LedgerFault("gone", gone);
  const isNewer = stored !== undefined && stored > newestSchema * 10;
  if (isNewer && mode === "write") throw new LedgerFault("newer", newer);

  const database = new Dexie(name, { chromeTransactionDurability: "strict" });
  // Without a declared schema Dexie takes a newer database as it is; with one it would add what it misses.
  if (!isNewer) declareSchemas(database);
  const unreadable = makeUnreadable();
  readAround(database, unreadable);
  // What is right in a newer version's rows is not for this one to say.
  if (!isNewer) checkReads(database, unreadable);
  mendReads(database, { ...asideMends, ...derivedMends });
  if (!isNewer) markChanges(database, newId);
  guard(database, status, { wasThere: mustExist || stored !== undefined, isNewer });
  try {
    await database.open();
  } catch (error) {
    database.close();
    throw faultOf(error, "Logbook not opened");
  }
  const there = new Set(database.tables.map(({ name: table }) => table));
  const needed: readonly string[] = [...tableNames, "digests"];
  const known = new Set([...needed, ...derivedTables, "aside"]);
  if (!needed.every((table) => there.has(table))) {
    database.close();
    throw new LedgerFault("newer", newer);
  }
  status.set(isNewer ? "newer" : "ok");

  const reading: ReadOnlyLogbook = {
    name,
    status,
    unreadable,
    tables: everyTable((table) => database.table(table)) as unknown as ReadOnlyLogbook["tables"],
    digests: database.table("digests"),
    ...(there.has("changeMarks") && { changeMarks: database.table("changeMarks") }),
    ...(there.has("keptAnswers") && { keptAnswers: database.table("keptAnswers") }),
    ...(there.has("aside") && { aside: database.table("aside") }),
    schema: isNewer ? Math.floor(stored / 10) : newestSchema,
    unknownTables: Object.fromEntries(
      database.tables.filter(({ name: table }) => !known.has(table)).map((table) => [table.name, table]),
    ),
    close: () => database.close(),
  };
  return mode === "read" ? reading : { ...reading, clock, newId, database };
}

/** Keeps an open database from coming back to life as an old or an empty one. */
function guard(
  database: Dexie,
  status: ReturnType<typeof makeStatus>,
  { wasThere, isNewer }: { readonly wasThere: boolean; readonly isNewer: boolean },
): void {
  let isKnown = wasThere;
  const stop = (kind: "newerTab" | "gone" | "closed") => {
    status.set(kind);
    database.close({ disableAutoOpen: true });
  };
  database.on("versionchange", (event) => {
    stop(event.newVersion ? "newerTab" : "gone");
    return false;
  });
  database.on("blocked", () => {
    status.set("blocked");
    return false;
  });
  database.on("populate", () => {
    if (isKnown) {
      stop("gone");
      throw new LedgerFault("gone", gone);
    }
  });
  database.on(
    "ready",
    () => {
      isKnown = true;
      if (!isNewer && database.backendDB().version > newestSchema * 10) {
        // Upgraded by another tab while this one was frozen, or had lost its connection.
        stop("newerTab");
        throw new LedgerFault("newerTab", upgraded);
      }
      database.backendDB().addEventListener("close", () => {
        comeBack(database).then(
          (isBack) => isBack || stop("gone"),
          () => status.get().kind === "ok" && stop("closed"),
        );
      });
    },
    true,
  );
}

/** While the browser is clearing a store, asking for it fails at first. */
const triesAfterLoss = 10;
const betweenTriesMs = 100;

/** Opens a database again whose connection was lost; false when it is no longer there. Makes nothing anew. */
async function comeBack(database: Dexie, triesLeft = triesAfterLoss): Promise<boolean> {
  try {
    if ((await nativeVersion(database.name)) === undefined) return false;
    await database.open();
    return true;
  } catch (error) {
    if (triesLeft <= 1) throw error;
    await new Promise((resolve) => setTimeout(resolve, betweenTriesMs));
    return comeBack(database, triesLeft - 1);
  }
}
