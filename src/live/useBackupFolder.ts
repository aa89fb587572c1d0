import { useLiveQuery } from "dexie-react-hooks";
import { type BackupFolder, backupFolder, type KeptCopy, keptCopies } from "#db";
import { useLogbook } from "./logbookContext.ts";

/** The folder the open logbook is backed up to by itself: null where none was chosen, undefined until it is known. */
export function useBackupFolder(): BackupFolder | null | undefined {
  const { shelf, book } = useLogbook();
  return useLiveQuery(async () => (await backupFolder(shelf, book.name)) ?? null, [shelf, book.name]);
}

/** The states kept of the open logbook, the newest first; undefined until read. */
export function useKeptCopies(): readonly KeptCopy[] | undefined {
  const { shelf, book } = useLogbook();
  return useLiveQuery(() => keptCopies(shelf, book.name), [shelf, book.name]);
}
