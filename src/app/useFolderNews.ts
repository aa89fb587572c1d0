import { useEffect, useState } from "react";
import { setBackupFolder } from "#db";
import { practiceDay } from "#domain";
import { useBackupFolder, useLogbook } from "#live";
import { useNotices } from "#state/notices.ts";

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
      const { newsIn } = await import("./newsIn.ts");
      const news = await newsIn(row, practiceDay(surroundings.clock(), "UTC", 0));
      if (isLeft) return;
      if (typeof news === "string") await setBackupFolder(shelf, { ...row, stopped: news });
      else setFound(news);
    };
    look().catch((fault: Error) => {
      // A logbook that is being closed takes the shelf with it.
      if (isLeft) return;
      const text = `The folder of automatic backup was not looked at: ${fault.message}`;
      useNotices.getState().say({ kind: "fault", text, actions: [] });
    });
    return () => {
      isLeft = true;
    };
  }, [isChosen, shelf, book, surroundings]);
  const seen = Object.values(folder?.seen ?? {});
  return found.some((name) => !seen.includes(name));
}
