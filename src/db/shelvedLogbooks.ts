import { Dexie } from "dexie";
import type { CalendarDate } from "#domain";
import { faultOf, LedgerFault } from "./fault.ts";
import type { Shelf, ShelvedLogbook } from "./shelf.ts";

const daysKept = 31;

/** Every logbook, the one opened last first. */
export async function listLogbooks(shelf: Shelf): Promise<ShelvedLogbook[]> {
  const rows = await shelf.logbooks.toArray();
  return rows.sort((a, b) => b.lastOpened - a.lastOpened || (a.name < b.name ? -1 : 1));
}

/** A name for a new logbook's database; nothing is made yet. */
export function newLogbookName(shelf: Pick<Shelf, "newId">): string {
  return `lap-ledger-${shelf.newId()}`;
}

/**
 * Enters a logbook in the list; its database is made when it is first opened, or has been by a restore under the
 * name given.
 */
export async function createLogbook(
  shelf: Shelf,
  {
    title,
    kind = "own",
    name = newLogbookName(shelf),
  }: { title: string; kind?: "own" | "demo"; name?: string },
): Promise<ShelvedLogbook> {
  const now = shelf.clock();
  const row: ShelvedLogbook = {
    name,
    title: title.trim() || "My logbook",
    kind,
    createdAt: now,
    lastOpened: now,
    lapsSinceBackup: 0,
    openedOn: [],
  };
  await stored(shelf.logbooks.add(row), "Logbook not made");
  return row;
}

/** Changes the driver's name for a logbook. */
export async function renameLogbook(shelf: Shelf, name: string, title: string): Promise<void> {
  if (title.trim() === "") throw new LedgerFault("invalid", "Name not changed: a logbook needs a name.");
  await stored(shelf.logbooks.update(name, { title: title.trim() }), "Name not changed");
}

/**
 * Removes a logbook with its database, drafts and copy. Close it before. Rejects when another tab keeps it open for
 * longer than two seconds; the list then still holds it.
 */
export async function removeLogbook(shelf: Shelf, name: string): Promise<void> {
  await deleteDatabase(name);
  await stored(
    shelf.database.transaction("rw", shelf.logbooks, shelf.copies, shelf.drafts, async () => {
      await shelf.logbooks.delete(name);
      await shelf.copies.delete(name);
      await shelf.drafts.where("key").startsWith(`${name}/`).delete();
    }),
    "Logbook not removed from the list",
  );
}

/** Deletes a database wholly. Throws the fault `closed` when another tab keeps it open. */
export async function deleteDatabase(name: string): Promise<void> {
  const database = new Dexie(name);
  let giveUp: ReturnType<typeof setTimeout> | undefined;
  const blocked = new Promise<never>((_, reject) => {
    database.on("blocked", () => {
      giveUp = setTimeout(
        () =>
          reject(new LedgerFault("closed", "Not erased yet: another tab has this logbook open. Close it.")),
        2000,
      );
      return false;
    });
  });
  try {
    await Promise.race([database.delete(), blocked]);
  } catch (error) {
    throw faultOf(error, "Logbook not erased");
  } finally {
    clearTimeout(giveUp);
  }
}

/** Puts the database of a restore in the place of a logbook's old one; title and kind stay. The old one is removed. */
export async function replaceLogbook(
  shelf: Shelf,
  oldName: string,
  newName: string,
): Promise<ShelvedLogbook> {
  const row = await stored(
    shelf.database.transaction("rw", shelf.logbooks, async () => {
      const old = await shelf.logbooks.get(oldName);
      if (old === undefined)
        throw new LedgerFault("missing", "Not replaced: the logbook is no longer in the list.");
      const next = { ...old, name: newName, lastOpened: shelf.clock() };
      await shelf.logbooks.delete(oldName);
      await shelf.logbooks.add(next);
      return next;
    }),
    "Logbook not replaced",
  );
  await deleteDatabase(oldName);
  return row;
}

/** Notes that a logbook was opened, and on which day. */
export async function noteOpened(shelf: Shelf, name: string, on: CalendarDate): Promise<void> {
  await stored(
    shelf.logbooks
      .where("name")
      .equals(name)
      .modify((row, place) => {
        const openedOn = [...new Set([...row.openedOn, on])].slice(-daysKept);
        place.value = { ...row, lastOpened: shelf.clock(), openedOn };
      }),
    "Opening not noted",
  );
}

/** Notes that laps were stored since the last backup. */
export async function noteLaps(shelf: Shelf, name: string, laps: number): Promise<void> {
  await stored(
    shelf.logbooks
      .where("name")
      .equals(name)
      .modify((row, place) => {
        place.value = { ...row, lapsSinceBackup: row.lapsSinceBackup + laps };
      }),
    "Laps since the last backup not counted",
  );
}

/** Notes that a backup has been saved now. */
export async function noteBackup(shelf: Shelf, name: string): Promise<void> {
  await stored(
    shelf.logbooks.update(name, { lastBackupAt: shelf.clock(), lapsSinceBackup: 0 }),
    "Date of the backup not noted",
  );
}

async function stored<R>(done: PromiseLike<R>, notDone: string): Promise<R> {
  try {
    return await done;
  } catch (error) {
    throw faultOf(error, notDone);
  }
}
