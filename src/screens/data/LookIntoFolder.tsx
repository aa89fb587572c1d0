import { useState } from "react";
import { type BackupFolder, setBackupFolder } from "#db";
import { practiceDay, sayDate, timeOfDay } from "#domain";
import { askToWrite, type DatedFile, fileIn, newestOfOthers } from "#files";
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
  const zone = surroundings.zone();
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
      if (await askToWrite(folder.handle)) setFound(await newestOfOthers(folder.handle, folder.tag));
    });
  const lookAt = ({ name, tag }: DatedFile) =>
    orSay(async () => {
      looking.look(name, await fileIn(folder.handle, name));
      await shelfWrite((shelf) =>
        setBackupFolder(shelf, { ...folder, seen: { ...folder.seen, [tag]: name } }),
      );
    });
  const made = ({ at }: DatedFile) => {
    const instant = Date.parse(at.replace(/T(\d\d)(\d\d)(\d\d)/, "T$1:$2:$3"));
    return `${sayDate(practiceDay(instant, zone, 0))}, ${timeOfDay(instant, zone)}`;
  };
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
          {found.map((file) => (
            <li key={file.name} className={styles["logbook"]}>
              <div id={`dated-${file.tag}`}>
                <div className={styles["title"]}>Another device, {made(file)}</div>
                <div className={styles["about"]}>
                  {file.name}
                  {folder.seen[file.tag] === file.name && " · looked at before"}
                </div>
              </div>
              <div className={styles["buttons"]}>
                <Button
                  size="between"
                  aria-describedby={`dated-${file.tag}`}
                  onClick={() => void lookAt(file)}
                >
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
