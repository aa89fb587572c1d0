import type { Table } from "dexie";
import { draftsInto } from "./drafts.ts";
import { LedgerFault } from "./fault.ts";
import type { Shelf, ShelvedLogbook } from "./shelf.ts";
import { nextTurn } from "./shelvedLogbooks.ts";
import { storedOnShelf } from "./storedOnShelf.ts";

/**
 * Puts the database of a restore in the place of a logbook's old one, with its kept states, folder and drafts; title
 * and kind stay. The old database is then out of the list: close it and hand it to `deleteDatabase`.
 */
export async function replaceLogbook(
  shelf: Shelf,
  oldName: string,
  newName: string,
): Promise<ShelvedLogbook> {
  const { database, logbooks, kept, folders, drafts, unlisted, sent, deleted } = shelf;
  return storedOnShelf(
    database.transaction("rw", [logbooks, kept, folders, drafts, unlisted, sent, deleted], async () => {
      const old = await logbooks.get(oldName);
      if (old === undefined)
        throw new LedgerFault("missing", "Not replaced: the logbook is no longer in the list.");
      const next = { ...old, name: newName, lastOpened: shelf.clock(), turn: await nextTurn(shelf) };
      await logbooks.delete(oldName);
      await logbooks.add(next);
      await unlisted.delete(newName);
      await unlisted.put({ name: oldName, since: shelf.clock() });
      await kept.where("logbook").equals(oldName).modify({ logbook: newName });
      const folder = await folders.get(oldName);
      if (folder) await folders.add({ ...folder, logbook: newName });
      await folders.delete(oldName);
      for (const table of [sent, deleted]) {
        const row = await table.get(oldName);
        if (row) await (table as Table<typeof row>).add({ ...row, logbook: newName });
        await table.delete(oldName);
      }
      await draftsInto(shelf, oldName, newName);
      return next;
    }),
    "Logbook not replaced",
  );
}
