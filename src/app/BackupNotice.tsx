import { type ReactNode, useState } from "react";
import { notedOn, practiceDay, sayNoted } from "#domain";
import { saveBackup, useFolder, useLogbook, useRows, useShelvedNow } from "#live";
import { goTo, useAddress } from "#state/address.ts";
import { Button } from "#ui/Button.tsx";
import { Notice } from "#ui/Notice.tsx";
import { sayBackup } from "../screens/data/backupWords.ts";
import { useFolderNews } from "./useFolderNews.ts";
import { useRequest } from "./useRequest.ts";

/** The one request between two sessions, above the page. While a session is open nothing of it is followed. */
export function BackupNotice() {
  const open = useRows((book) => book.digests.orderBy("openSince").count(), []);
  const [hasEnded, setEnded] = useState(false);
  if (open !== undefined && open > 0 && !hasEnded) setEnded(true);
  const hasNews = useFolderNews();
  return open === 0 ? <Requested hasEnded={hasEnded} hasNews={hasNews} /> : null;
}

interface RequestedProps {
  readonly hasEnded: boolean;
  readonly hasNews: boolean;
}

/** Never on Data, which has the whole of it. */
function Requested(known: RequestedProps) {
  const open = useLogbook();
  const { surroundings, entry } = open;
  const shelved = useShelvedNow();
  const { place } = useAddress();
  const { folder, allow } = useFolder();
  const { request, settle } = useRequest({ folder, ...known });
  if (request === undefined || request === "keep" || place === "data") return null;

  const [now, zone] = [surroundings.clock(), surroundings.zone()];
  const notice = (words: ReactNode, button: string, act: () => void) => (
    <div role="status">
      <Notice
        tone={request === "allow" ? "caution" : "plain"}
        actions={
          <>
            <Button variant="quiet" size="between" onClick={settle}>
              Later
            </Button>
            <Button size="between" onClick={act}>
              {button}
            </Button>
          </>
        }
      >
        <p>{words}</p>
      </Notice>
    </div>
  );
  switch (request) {
    case "allow": {
      const { stopped, lastGoodAt } = folder ?? {};
      const last =
        lastGoodAt === undefined
          ? "There is no good one yet."
          : `The last good one is of ${sayNoted(lastGoodAt, now, zone)}.`;
      return notice(`Automatic backup has stopped: ${stopped}. ${last}`, "Allow again", () => void allow());
    }
    case "look":
      return notice(
        "Another device has backed up into the folder. What it has can be merged on Data.",
        "Look at it",
        () => goTo({ place: "data", part: "automatic" }),
      );
    case "backup": {
      const { lastBackupAt } = shelved;
      const lastOn = lastBackupAt === undefined ? undefined : notedOn(lastBackupAt, now, zone);
      return notice(
        sayBackup(shelved, lastOn, practiceDay(now, zone, 0)),
        "Save one now",
        () => void saveBackup(open, entry),
      );
    }
    case "install":
      return notice(
        "This browser may clear what a site stored after seven days without a visit, but not what an app on the home screen did. Put Lap Ledger there from the browser’s menu.",
        "Understood",
        settle,
      );
  }
}
