import { useState } from "react";
import { type BackupFolder, setBackupFolder } from "#db";
import { practiceDay, sayNoted } from "#domain";
import { askToWrite, type DatedFile, datedAt, fileIn, lineOf, newestOfOthers } from "#files";
import { useLogbook, useShelfWrite } from "#live";
import { useNotices } from "#state/notices.ts";
import { Button } from "#ui/Button.tsx";
import { Incoming } from "./Incoming.tsx";
import styles from "./LogbooksPart.module.css";
import { useLook } from "./useLook.ts";

interface LookIntoFolderProps {
  readonly folder: BackupFolder;
  readonly titles: readonly string[];
}

/** The newest file of each other device that backs up into the same folder, to be merged. */
export function LookIntoFolder({ folder, titles }: LookIntoFolderProps) {
  const { surroundings } = useLogbook();
  const shelfWrite = useShelfWrite();
  const say = useNotices((notices) => notices.say);
  const looking = useLook();
  const [found, setFound] = useState<readonly DatedFile[]>();
  const [now, zone] = [surroundings.clock(), surroundings.zone()];
  const today = practiceDay(now, "UTC", 0);
  const orSay = async (work: () => Promise<void>) => {
    try {
      await work();
    } catch (error) {
      const why = error instanceof Error ? error.name : String(error);
      say({ kind: "fault", text: `The folder could not be read (${why}). Choose it again.`, actions: [] });
    }
  };
  const lookInto = () =>
    orSay(async () => {
      if (!(await askToWrite(folder.handle))) return;
      setFound(await newestOfOthers(folder.handle, folder.tag, today));
    });
  const lookAt = (file: DatedFile) =>
    orSay(async () => {
      const { name } = file;
      looking.look(name, await fileIn(folder.handle, name));
      await shelfWrite((shelf) =>
        setBackupFolder(shelf, { ...folder, seen: { ...folder.seen, [lineOf(file, today)]: name } }),
      );
    });
  return (
    <>
      <div>
        <Button size="between" onClick={() => void lookInto()}>
          Look into the folder
        </Button>
        <div role="status">{found?.length === 0 && <p>No other device has backed up into it yet.</p>}</div>
      </div>
      {found !== undefined && found.length > 0 && (
        <ul className={styles["list"]}>
          {found.map((file, index) => (
            <li key={file.name} className={styles["logbook"]}>
              <div id={`dated-${index}`}>
                <div className={styles["title"]}>Another device, {sayNoted(datedAt(file), now, zone)}</div>
                <div className={styles["about"]}>
                  {file.name}
                  {Object.values(folder.seen).includes(file.name) && " · looked at before"}
                </div>
              </div>
              <div className={styles["buttons"]}>
                <Button size="between" aria-describedby={`dated-${index}`} onClick={() => void lookAt(file)}>
                  Look at it
                </Button>
              </div>
            </li>
          ))}
        </ul>
      )}
      <Incoming looking={looking} titles={titles} first="merge" onLeave={() => undefined} />
    </>
  );
}
