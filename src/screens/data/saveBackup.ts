import { dump, LedgerFault, newestSchema, noteBackup, openLogbook, type ShelvedLogbook } from "#db";
import { practiceDay } from "#domain";
import { browserSha256, fileName, saveFile, writeBackup } from "#files";
import type { OpenLogbook } from "#live";
import { useNotices } from "#state/notices.ts";

type Around = Pick<OpenLogbook, "shelf" | "surroundings">;

/**
 * Hands a logbook of the shelf to the browser's downloads as one file. Reads by a connection of its own, so that it
 * works for one that is not open, and when the open one has lost its connection. False when it failed, which the
 * driver has then been told.
 */
export async function saveBackup(around: Around, logbook: ShelvedLogbook): Promise<boolean> {
  const { say } = useNotices.getState();
  try {
    const saved = await handOver(around, logbook);
    say({ kind: "done", text: `Backup handed to this browser’s downloads as ${saved}.`, actions: [] });
    return true;
  } catch (error) {
    const why = error instanceof LedgerFault ? error.message : `Backup not saved: ${String(error)}`;
    const again = { name: "Try again", run: () => void saveBackup(around, logbook) };
    say({ kind: "fault", text: why, actions: [again] });
    return false;
  }
}

async function handOver({ shelf, surroundings }: Around, { name, title }: ShelvedLogbook): Promise<string> {
  const { clock, newId, zone } = surroundings;
  const book = await openLogbook({ name, mode: "read", clock, newId });
  try {
    if (book.status.get().kind === "newer")
      throw new LedgerFault(
        "newer",
        "Backup not saved: this logbook was last used by a newer version of Lap Ledger. Reload to get it, then save the backup.",
      );
    const text = await writeBackup(await dump(book), {
      title,
      schema: newestSchema,
      sha256: browserSha256(),
    });
    const file = fileName(`Lap Ledger ${title}`, practiceDay(clock(), zone(), 0), "json");
    saveFile(file, text);
    await noteBackup(shelf, name);
    return file;
  } finally {
    book.close();
  }
}
