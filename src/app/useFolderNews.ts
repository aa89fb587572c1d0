import { useEffect, useState } from "react";
import { type BackupFolder, setBackupFolder } from "#db";
import { mayWrite, newestOfOthers } from "#files";
import { useBackupFolder, useLogbook } from "#live";

/**
 * Looks at the folder of automatic backup once after opening. A folder that may no longer be written to is noted as
 * stopped. True when another device has left a file there that the driver has not looked at yet.
 */
export function useFolderNews(): boolean {
  const { shelf, book } = useLogbook();
  const folder = useBackupFolder();
  const [found, setFound] = useState<Readonly<Record<string, string>>>({});
  const isChosen = folder !== undefined && folder !== null;
  useEffect(() => {
    if (!isChosen) return;
    let isLeft = false;
    const look = async () => {
      const row = await shelf.folders.get(book.name);
      if (row === undefined || row.stopped !== undefined || isLeft) return;
      const news = await newsIn(row);
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
  }, [isChosen, shelf, book]);
  const seen = folder?.seen ?? {};
  return Object.entries(found).some(([tag, name]) => name > (seen[tag] ?? ""));
}

/** The newest file of each other device by its tag, or why the folder cannot be used. */
async function newsIn({ handle, tag }: BackupFolder): Promise<Readonly<Record<string, string>> | string> {
  if (!(await mayWrite(handle))) return "the browser asks again for leave to write into the folder";
  try {
    const others = await newestOfOthers(handle, tag);
    return Object.fromEntries(others.map((file) => [file.tag, file.name]));
  } catch (error) {
    if (error instanceof DOMException) return "the folder has been moved or deleted";
    throw error;
  }
}
