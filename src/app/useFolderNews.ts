import { useEffect, useState } from "react";
import { type BackupFolder, setBackupFolder } from "#db";
import { type CalendarDate, practiceDay } from "#domain";
import { mayWrite, newestOfOthers } from "#files";
import { useBackupFolder, useLogbook } from "#live";

/**
 * Looks at the folder of automatic backup once after opening. A folder that may no longer be written to is noted as
 * stopped. True when another device has left a file there that the driver has not looked at yet.
 */
export function useFolderNews(): boolean {
  const { shelf, book, surroundings } = useLogbook();
  const folder = useBackupFolder();
  const [found, setFound] = useState<readonly string[]>([]);
  const isChosen = folder !== undefined && folder !== null;
  useEffect(() => {
    if (!isChosen) return;
    let isLeft = false;
    const look = async () => {
      const row = await shelf.folders.get(book.name);
      if (row === undefined || row.stopped !== undefined || isLeft) return;
      const news = await newsIn(row, practiceDay(surroundings.clock(), "UTC", 0));
      if (isLeft) return;
      if (typeof news === "string") await setBackupFolder(shelf, { ...row, stopped: news });
      else setFound(news);
    };
    look().catch((fault: unknown) => {
      // A logbook that is being closed takes the shelf with it.
      if (!isLeft) throw fault;
    });
    return () => {
      isLeft = true;
    };
  }, [isChosen, shelf, book, surroundings]);
  const seen = Object.values(folder?.seen ?? {});
  return found.some((name) => !seen.includes(name));
}

/** The names of the newest files of other devices, or why the folder cannot be used. */
async function newsIn(
  { handle, tag }: BackupFolder,
  today: CalendarDate,
): Promise<readonly string[] | string> {
  if (!(await mayWrite(handle))) return "the browser asks again for leave to write into the folder";
  try {
    return (await newestOfOthers(handle, tag, today)).map(({ name }) => name);
  } catch (error) {
    if (error instanceof DOMException) return "the folder has been moved or deleted";
    throw error;
  }
}
