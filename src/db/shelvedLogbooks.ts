import { Dexie } from "dexie";
import type { CalendarDate } from "#domain";
import { faultOf, LedgerFault } from "./fault.ts";
import type { Shelf, ShelvedLogbook } from "./shelf.ts";
import { storedOnShelf } from "./storedOnShelf.ts";

const daysKept = 31;

/** Every logbook, the one opened last first. */
export async function listLogbooks(shelf: Shelf): Promise<ShelvedLogbook[]> {
  const rows = await shelf.logbooks.toArray();
  const turn = (row: ShelvedLogbook) => row.turn ?? 0;
  return rows.sort((a, b) => turn(b) - turn(a) || b.lastOpened - a.lastOpened || (a.name < b.name ? -1 : 1));
}

/** The turn of whatever is opened next. */
export async function nextTurn(shelf: Shelf): Promise<number> {
  const rows = await shelf.logbooks.toArray();
  return 1 + Math.max(0, ...rows.map(({ turn = 0 }) => turn));
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
  const { database, logbooks, unlisted } = shelf;
  await storedOnShelf(
    database.transaction("rw", [logbooks, unlisted], async () => {
      await logbooks.add({ ...row, turn: await nextTurn(shelf) });
      await unlisted.delete(name);
    }),
    "Logbook not made",
  );
  return row;
}

/**
 * Removes a logbook with its database, drafts and kept states. Close it before. Rejects when another tab keeps it open for
 * longer than two seconds; the list then still holds it.
 */
export async function removeLogbook(shelf: Shelf, name: string): Promise<void> {
  await deleteDatabase(name);
  await storedOnShelf(
    shelf.database.transaction(
      "rw",
      [shelf.logbooks, shelf.kept, shelf.packs, shelf.folders, shelf.drafts, shelf.sent, shelf.deleted],
      async () => {
        await shelf.logbooks.delete(name);
        await shelf.packs.bulkDelete(await shelf.kept.where("logbook").equals(name).primaryKeys());
        await shelf.kept.where("logbook").equals(name).delete();
        await shelf.folders.delete(name);
        await shelf.sent.delete(name);
        await shelf.deleted.delete(name);
        await shelf.drafts.where("key").startsWith(`${name}/`).delete();
      },
    ),
    "Logbook not removed from the list",
  );
}

/**
 * Deletes a database wholly. Throws the fault `closed` when another tab keeps it open for longer than two seconds.
 * @param onBlocked where given, the other tab is waited for instead, and this is told
 */
export async function deleteDatabase(name: string, onBlocked?: () => void): Promise<void> {
  const database = new Dexie(name);
  let giveUp: ReturnType<typeof setTimeout> | undefined;
  const blocked = new Promise<never>((_, reject) => {
    database.on("blocked", () => {
      if (onBlocked !== undefined) {
        onBlocked();
        return false;
      }
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

/** Notes that a logbook was opened, and on which day. A day that a clock once wrong comes back to counts once. */
export async function noteOpened(shelf: Shelf, name: string, on: CalendarDate): Promise<void> {
  await storedOnShelf(
    shelf.database.transaction("rw", shelf.logbooks, async () => {
      const turn = await nextTurn(shelf);
      await shelf.logbooks
        .where("name")
        .equals(name)
        .modify((row, place) => {
          const { openedOn, daysOpened = openedOn.length } = row;
          const isNew = !openedOn.includes(on);
          place.value = {
            ...row,
            lastOpened: shelf.clock(),
            turn,
            openedOn: isNew ? [...openedOn, on].slice(-daysKept) : openedOn,
            daysOpened: daysOpened + (isNew ? 1 : 0),
          };
        });
    }),
    "Opening not noted",
  );
}

/** Notes what the clock says now that it has jumped, so that the next opening does not tell of it again. */
export async function noteClock(shelf: Shelf, name: string): Promise<void> {
  await storedOnShelf(
    shelf.logbooks.update(name, { lastOpened: shelf.clock() }),
    "Jump of the clock not noted",
  );
}

/** Days a logbook has been opened on in all. */
export function daysOpened({ daysOpened: days, openedOn }: ShelvedLogbook): number {
  return days ?? openedOn.length;
}

/** Notes that laps were stored since the last backup. */
export async function noteLaps(shelf: Shelf, name: string, laps: number): Promise<void> {
  await storedOnShelf(
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
  await storedOnShelf(
    shelf.logbooks.update(name, { lastBackupAt: shelf.clock(), lapsSinceBackup: 0 }),
    "Date of the backup not noted",
  );
}
