import { useEffect, useState } from "react";
import { notedOn, practiceDay } from "#domain";
import { type Folder, useLogbook, useRows, useShelvedNow } from "#live";
import { useDevice } from "#state/device.ts";
import { oneRequest, type Request } from "#state/oneRequest.ts";
import { askToKeep, isClearedUnlessInstalled, type Kept, storageState } from "#state/storage.ts";
import { isBackupDue } from "../screens/data/backupWords.ts";
import { useFolderNews } from "./useFolderNews.ts";

/** The time between two sessions. */
interface Rest {
  /** A session has ended before it; false where the page was opened with none going on. */
  readonly hasEnded: boolean;
  /** What was asked for in it: nothing else is, but for leave to write to a folder that has stopped taking backups. */
  readonly made: Request | undefined;
  /** The driver has answered, or wants to hear of it later. */
  readonly isSettled: boolean;
}

const fresh: Rest = { hasEnded: false, made: undefined, isSettled: false };

/** The one request between two sessions: chosen by `oneRequest`, and followed by no other before the next session has ended. */
export function useRequest(folder: Folder["folder"]): {
  readonly request: Request | undefined;
  readonly settle: () => void;
} {
  const { surroundings, entry } = useLogbook();
  const shelved = useShelvedNow();
  const hasNews = useFolderNews();
  const { askedToPersist, toldOfHomeScreen = false, change } = useDevice();
  const open = useRows((from) => from.digests.orderBy("openSince").count(), []);
  const [rest, setRest] = useState(fresh);
  const [kept, setKept] = useState<Kept>();
  const isResting = open === 0 && folder !== undefined && entry.kind === "own";

  useEffect(() => {
    if (open !== undefined && open > 0) setRest({ ...fresh, hasEnded: true });
    let isOver = false;
    void storageState().then((state) => isOver || setKept(state.kept));
    return () => {
      isOver = true;
    };
  }, [open]);

  const [now, zone] = [surroundings.clock(), surroundings.zone()];
  const { lastBackupAt } = shelved;
  const lastOn = lastBackupAt === undefined ? undefined : notedOn(lastBackupAt, now, zone);
  const needed =
    isResting && kept !== undefined
      ? oneRequest({
          hasEnded: rest.hasEnded,
          folder: folder === null ? "none" : folder.stopped === undefined ? "going" : "stopped",
          hasNews,
          isBackupDue: isBackupDue(shelved, lastOn, practiceDay(now, zone, 0)),
          kept,
          wasAskedToKeep: askedToPersist !== undefined,
          canInstall: isClearedUnlessInstalled(),
          wasAskedToInstall: toldOfHomeScreen,
        })
      : undefined;
  const isFirst = needed !== undefined && rest.made === undefined;
  useEffect(() => {
    if (!isFirst) return;
    setRest((before) => ({ ...before, made: needed }));
    // The browser asks this by itself, or decides without a word.
    if (needed === "keep") void askToKeep();
  }, [isFirst, needed]);

  const isMade = needed !== undefined && (needed === rest.made || needed === "allow");
  const settle = () => {
    if (needed === "install") change({ toldOfHomeScreen: true });
    setRest((before) => ({ ...before, isSettled: true }));
  };
  return { request: isMade && !rest.isSettled ? needed : undefined, settle };
}
