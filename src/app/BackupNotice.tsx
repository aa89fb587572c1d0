import { type ReactNode, useState } from "react";
import { notedOn, practiceDay, sayNoted } from "#domain";
import { saveBackup, useFolder, useLogbook, useRows, useShelvedNow } from "#live";
import { goTo, useAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import { isBackupDue } from "../screens/data/backupWords.ts";
import { useFolderNews } from "./useFolderNews.ts";

/**
 * What is to be said about backups, above the page and one thing at a time: that automatic backup has stopped, that
 * another device left something, that many laps are in this browser only. Never while a session is open.
 */
export function BackupNotice() {
  const open = useLogbook();
  const { surroundings, entry } = open;
  const shelved = useShelvedNow();
  const { place } = useAddress();
  const { folder, allow } = useFolder();
  const hasNews = useFolderNews();
  const openSessions = useRows((from) => from.digests.orderBy("openSince").count(), []);
  const [isLater, setLater] = useState(false);
  if (folder === undefined || openSessions !== 0 || isLater) return null;
  if (place === "data" || entry.kind === "demo") return null;

  const [now, zone] = [surroundings.clock(), surroundings.zone()];
  const notice = (words: ReactNode, button: string, act: () => void) => (
    <div role="status">
      <Notice
        tone={folder?.stopped === undefined ? "plain" : "caution"}
        actions={
          <>
            <Button size="between" onClick={act}>
              {button}
            </Button>
            <Button variant="quiet" size="between" onClick={() => setLater(true)}>
              Later
            </Button>
          </>
        }
      >
        <p>{words}</p>
      </Notice>
    </div>
  );
  if (folder?.stopped !== undefined) {
    const { stopped, lastGoodAt } = folder;
    const last =
      lastGoodAt === undefined
        ? "There is no good one yet."
        : `The last good one is of ${sayNoted(lastGoodAt, now, zone)}.`;
    return notice(`Automatic backup has stopped: ${stopped}. ${last}`, "Allow again", () => void allow());
  }
  if (hasNews) {
    const words = "Another device has backed up into the folder. What it has can be merged on Data.";
    return notice(words, "Look at it", () => goTo({ place: "data" }));
  }
  const { lastBackupAt } = shelved;
  const lastOn = lastBackupAt === undefined ? undefined : notedOn(lastBackupAt, now, zone);
  if (folder !== null || !isBackupDue(shelved, lastOn, practiceDay(now, zone, 0))) return null;
  const laps = `${shelved.lapsSinceBackup} ${shelved.lapsSinceBackup === 1 ? "lap is" : "laps are"}`;
  return notice(`${laps} in this browser only.`, "Save a backup", () => void saveBackup(open, entry));
}
