import type { CalendarDate, Id } from "#domain";
import { LedgerFault } from "./fault.ts";
import type { Shelf, WaitingSince } from "./shelf.ts";
import { storedOnShelf } from "./storedOnShelf.ts";

/** Changes the driver's name for a logbook. */
export async function renameLogbook(shelf: Shelf, name: string, title: string): Promise<void> {
  if (title.trim() === "") throw new LedgerFault("invalid", "Name not changed: a logbook needs a name.");
  await storedOnShelf(shelf.logbooks.update(name, { title: title.trim() }), "Name not changed");
}

/** Notes which stamp ahead of the clock the driver has been told of. */
export async function noteToldAhead(shelf: Shelf, name: string, newest: number): Promise<void> {
  await storedOnShelf(shelf.logbooks.update(name, { toldAhead: newest }), "Dates after today not noted");
}

/** Notes on which day deleted rows were last removed for good, and what waits for it. */
export async function notePurged(
  shelf: Shelf,
  name: string,
  on: CalendarDate,
  waiting: WaitingSince,
): Promise<void> {
  await storedOnShelf(
    shelf.database.transaction("rw", shelf.logbooks, shelf.deleted, async () => {
      await shelf.logbooks.update(name, { purgedOn: on });
      await shelf.deleted.put({ logbook: name, waiting });
    }),
    "Removal of deleted rows not noted",
  );
}

/** Notes that the rows with these marks have been sent to another device. */
export async function noteSent(shelf: Shelf, name: string, marks: ReadonlyMap<Id, number>): Promise<void> {
  await storedOnShelf(shelf.sent.put({ logbook: name, at: shelf.clock(), marks }), "Sending not noted");
}
