import { Dexie, type Table } from "dexie";
import type { CalendarDate, Id } from "#domain";
import { faultOf } from "./fault.ts";

/** A logbook this browser holds; `name` is the name of its database. */
export interface ShelvedLogbook {
  readonly name: string;
  /** The driver's words for it. */
  readonly title: string;
  readonly kind: "own" | "demo";
  readonly createdAt: number;
  readonly lastOpened: number;
  readonly lastBackupAt?: number;
  readonly lapsSinceBackup: number;
  /** The last days it was opened on, at most 31, oldest first: deleted rows are purged by these. */
  readonly openedOn: readonly CalendarDate[];
}

/** A lap on its way into the book: its text, and the id its row will have. */
export interface OnItsWay {
  readonly lapId: Id;
  readonly runId: Id;
  readonly text: string;
}

/** Text not yet stored: a half-typed entry line, laps on their way, open forms. One row a key. */
export interface Draft {
  /** Name of the logbook, a slash, and what it is for: "lap-ledger-…/line/<session>". */
  readonly key: string;
  readonly text: string;
  readonly onItsWay?: readonly OnItsWay[];
  /** Whatever else the form behind the key wants to find again; plain data. */
  readonly state?: unknown;
}

/** A logbook packed as it was before a restore or merge. */
export interface PackedCopy {
  /** Name of the logbook it was made from. */
  readonly name: string;
  readonly madeAt: number;
  readonly why: string;
  readonly packed: Blob | string;
}

/** The small database beside the logbooks. */
export interface Shelf {
  readonly logbooks: Table<ShelvedLogbook, string>;
  readonly drafts: Table<Draft, string>;
  readonly copies: Table<PackedCopy, string>;
  readonly database: Dexie;
  readonly clock: () => number;
  readonly newId: () => Id;
  readonly close: () => void;
}

/** Opens the shelf, making it where it is new. Throws LedgerFault. */
export async function openShelf(options: {
  readonly clock: () => number;
  readonly newId: () => Id;
  readonly name?: string;
}): Promise<Shelf> {
  const { clock, newId, name = "lap-ledger" } = options;
  const database = new Dexie(name, { chromeTransactionDurability: "strict" });
  database.version(1).stores({ logbooks: "name", drafts: "key", copies: "name" });
  try {
    await database.open();
  } catch (error) {
    throw faultOf(error, "List of logbooks not opened");
  }
  return {
    logbooks: database.table("logbooks"),
    drafts: database.table("drafts"),
    copies: database.table("copies"),
    database,
    clock,
    newId,
    close: () => database.close(),
  };
}
