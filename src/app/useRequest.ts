import { useEffect, useState } from "react";
import { notedOn, practiceDay } from "#domain";
import { type Folder, useLogbook, useShelvedNow } from "#live";
import { useDevice } from "#state/device.ts";
import { oneRequest, type Request } from "#state/oneRequest.ts";
import { askToKeep, isClearedUnlessInstalled, type Kept, storageState } from "#state/storage.ts";
import { isBackupDue } from "../screens/data/backupWords.ts";

interface Known {
  readonly folder: Folder["folder"];
  /** Another device has left a file in it that has not been looked at. */
  readonly hasNews: boolean;
  /** A session has ended on this page; false where it was opened with none going on. */
  readonly hasEnded: boolean;
}

/**
 * The one request between two sessions: chosen by `oneRequest`, and followed by no other as long as the page that asks for it
 * stands, but for leave to write to a folder that has stopped taking backups.
 */
export function useRequest({ folder, hasNews, hasEnded }: Known): {
  readonly request: Request | undefined;
  readonly settle: () => void;
} {
  const { surroundings, entry } = useLogbook();
  const shelved = useShelvedNow();
  const { askedToPersist, toldOfHomeScreen = false, change } = useDevice();
  const [made, setMade] = useState<Request>();
  const [isSettled, setSettled] = useState(false);
  const [kept, setKept] = useState<Kept>();

  useEffect(() => {
    let isOver = false;
    void storageState().then((state) => isOver || setKept(state.kept));
    return () => {
      isOver = true;
    };
  }, []);

  const [now, zone] = [surroundings.clock(), surroundings.zone()];
  const { lastBackupAt } = shelved;
  const lastOn = lastBackupAt === undefined ? undefined : notedOn(lastBackupAt, now, zone);
  const needed =
    folder !== undefined && kept !== undefined && entry.kind === "own"
      ? oneRequest({
          hasEnded,
          folder: folder === null ? "none" : folder.stopped === undefined ? "going" : "stopped",
          hasNews,
          isBackupDue: isBackupDue(shelved, lastOn, practiceDay(now, zone, 0)),
          kept,
          wasAskedToKeep: askedToPersist !== undefined,
          canInstall: isClearedUnlessInstalled(),
          wasAskedToInstall: toldOfHomeScreen,
        })
      : undefined;
  const isFirst = needed !== undefined && made === undefined;
  useEffect(() => {
    if (!isFirst) return;
    setMade(needed);
    // The browser asks this by itself, or decides without a word.
    if (needed === "keep") void askToKeep();
  }, [isFirst, needed]);

  const isMade = needed !== undefined && (needed === made || needed === "allow");
  const settle = () => {
    if (needed === "install") change({ toldOfHomeScreen: true });
    setSettled(true);
  };
  return { request: isMade && !isSettled ? needed : undefined, settle };
}
