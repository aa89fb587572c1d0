import { faultOf } from "./fault.ts";
import type { BackupFolder, Shelf } from "./shelf.ts";

/** The folder a logbook is backed up to by itself; undefined where none was chosen. */
export function backupFolder(shelf: Shelf, logbook: string): Promise<BackupFolder | undefined> {
  return shelf.folders.get(logbook);
}

/** Keeps the folder chosen for a logbook, in place of another. */
export async function setBackupFolder(shelf: Shelf, folder: BackupFolder): Promise<void> {
  try {
    await shelf.folders.put(folder);
  } catch (error) {
    throw faultOf(error, "Folder not remembered");
  }
}

/** Ends the automatic backup of a logbook; files in the folder stay. */
export async function forgetBackupFolder(shelf: Shelf, logbook: string): Promise<void> {
  try {
    await shelf.folders.delete(logbook);
  } catch (error) {
    throw faultOf(error, "Automatic backup not ended");
  }
}
