import { Dexie, type Table } from "dexie";
import type { CalendarDate, Id } from "#domain";
import { mendReads } from "./edge/mendReads.ts";
import { shelfMends } from "./edge/shelfMends.ts";
import { faultOf } from "./fault.ts";

/** A logbook this browser holds; `name` is the name of its database. */
export interface ShelvedLogbook {
  readonly name: string;
  /** The driver's words for it. */
  readonly title: string;
  readonly kind: "own" | "demo";
  readonly createdAt: number;
  readonly lastOpened: number;
  /** Counts the openings of all logbooks: the one with the greatest was opened last, whatever clocks said. */
  readonly turn?: number;
  readonly lastBackupAt?: number;
  readonly lapsSinceBackup: number;
  /** The last days it was opened on, at most 31, in the order of opening. */
  readonly openedOn: readonly CalendarDate[];
  /** How many days it has been opened on in all: what is kept for thirty days of use is counted by it. */
  readonly daysOpened?: number;
  /** The day on which deleted rows were last removed for good. */
  readonly purgedOn?: CalendarDate;
  /** The newest stamp ahead of the clock that the driver has been told of. */
  readonly toldAhead?: number;
}

/** Text not yet stored: a half-typed entry line, laps on their way, open forms. One row for each tab it is typed in. */
export interface Draft {
  /** Name of the logbook, a slash, what it is for, a bar, and the tab: "lap-ledger-…/entry <session>|<tab>". */
  readonly key: string;
  /** What the driver would know it by. */
  readonly text: string;
  /** Whatever else the form behind the key wants to find again; plain data. */
  readonly state?: unknown;
  /** The tab it was typed in; rows kept before each tab had drafts of its own lack it, and the bar in the key. */
  readonly tab?: Id;
  /** When it was typed last. */
  readonly at?: number;
}

/** Why a state of a logbook was kept. */
export type KeptBecause = "session" | "merge" | "replace";

/** What is known of a kept state of a logbook; its bytes are a row of `packs`, read only when wanted. */
export interface KeptCopy {
  readonly id: Id;
  /** Name of the database of the logbook it is a state of. */
  readonly logbook: string;
  readonly title: string;
  /** What the clock said; the order of making is `n`. */
  readonly madeAt: number;
  /** Counts the states kept of a logbook; absent in those from before there was a count, which are all older. */
  readonly n?: number;
  /** What `markOfBook` gave for the rows in it. */
  readonly mark?: number;
  /** `daysOpened` of the logbook when it was kept. */
  readonly openDay?: number;
  readonly why: KeptBecause;
  /** Rows that are not deleted in it. */
  readonly sessions: number;
  readonly laps: number;
  /** Size of its bytes. */
  readonly bytes: number;
}

/** A backup file, packed or not. */
export interface Pack {
  readonly id: Id;
  readonly packed: Uint8Array<ArrayBuffer>;
}

/** The folder a logbook is backed up to by itself, and how that goes. */
export interface BackupFolder {
  /** Name of the database of the logbook. */
  readonly logbook: string;
  readonly handle: FileSystemDirectoryHandle;
  /** Tells the files of this browser from those of other devices in the same folder. */
  readonly tag: string;
  readonly lastGoodAt?: number;
  readonly lastFile?: string;
  /** Why nothing is written any more, in words; absent while all is well. */
  readonly stopped?: string;
  /** Newest file of each other device that the driver has looked at, by the tag of that device. */
  readonly seen: Readonly<Record<string, string>>;
}

/** What was sent to other devices of a logbook, to tell what has not been. */
export interface SentRows {
  /** Name of the database of the logbook. */
  readonly logbook: string;
  /** What the clock said at the last sending. */
  readonly at: number;
  /** The mark of each row as it was sent. */
  readonly marks: ReadonlyMap<Id, number>;
}

/** Deleted rows and laps that wait to be removed for good. */
export interface WaitingRows {
  /** Name of the database of the logbook. */
  readonly logbook: string;
  readonly waiting: WaitingSince;
}

/** By the id of what was deleted: its deletion, and `daysOpened` when that was first seen. */
export type WaitingSince = ReadonlyMap<Id, { readonly deletedAt: number; readonly day: number }>;

/** A database that is in no list: begun by a restore that has not ended, or taken out of the list to be deleted. */
export interface UnlistedDatabase {
  readonly name: string;
  readonly since: number;
  /** The day on which it was first found unlisted; absent until then. */
  readonly seenOn?: CalendarDate;
}

/** The small database beside the logbooks. */
export interface Shelf {
  readonly logbooks: Table<ShelvedLogbook, string>;
  readonly drafts: Table<Draft, string>;
  readonly kept: Table<KeptCopy, Id>;
  readonly packs: Table<Pack, Id>;
  readonly folders: Table<BackupFolder, string>;
  readonly unlisted: Table<UnlistedDatabase, string>;
  readonly sent: Table<SentRows, string>;
  readonly deleted: Table<WaitingRows, string>;
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
  mendReads(database, shelfMends);
  database.version(1).stores({ logbooks: "name", drafts: "key", copies: "name" });
  database.on("versionchange", () => {
    // Erased or upgraded by another tab: this one must not bring it back to life as an empty or an old one.
    database.close({ disableAutoOpen: true });
    return false;
  });
  database.version(2).stores({ copies: null, kept: "id, logbook", packs: "id", folders: "logbook" });
  database.version(3).stores({ unlisted: "name" });
  database.version(4).stores({ sent: "logbook", deleted: "logbook" });
  try {
    await database.open();
  } catch (error) {
    throw faultOf(error, "List of logbooks not opened");
  }
  return {
    logbooks: database.table("logbooks"),
    drafts: database.table("drafts"),
    kept: database.table("kept"),
    packs: database.table("packs"),
    folders: database.table("folders"),
    unlisted: database.table("unlisted"),
    sent: database.table("sent"),
    deleted: database.table("deleted"),
    database,
    clock,
    newId,
    close: () => database.close(),
  };
}
