import { forgetBackupFolder } from "#db";
import { sayNoted } from "#domain";
import { canChooseFolder } from "#files";
import { useFolder, useLogbook, useShelfWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { Notice } from "#ui/Notice.tsx";
import { Part } from "#ui/Part.tsx";
import { LookIntoFolder } from "./LookIntoFolder.tsx";
import styles from "./Restore.module.css";

/** Backup by itself, into a folder, where the browser offers it: what is set up, how it goes, what has stopped it. */
export function AutoBackupPart({ titles }: { readonly titles: readonly string[] }) {
  const { surroundings, entry } = useLogbook();
  const { folder, isBusy, choose, allow, backUp } = useFolder();
  const shelfWrite = useShelfWrite();
  if (folder === undefined || entry.kind === "demo") return null;
  const when = (at: number) => sayNoted(at, surroundings.clock(), surroundings.zone());
  if (folder === null)
    return (
      <Part title="Automatic backup" ruled>
        {canChooseFolder() ? (
          <>
            <p>
              Choose a folder, and after each session a dated file goes into it; the last ten stay. In a
              folder that a drive keeps in step between devices, each device finds the files of the others.
            </p>
            <p>
              <Button size="between" disabled={isBusy} onClick={() => void choose()}>
                Choose a folder
              </Button>
            </p>
          </>
        ) : (
          <p>
            This browser lets no page write into a folder by itself. Lap Ledger counts the laps since the last
            backup instead, and reminds you between sessions.
          </p>
        )}
      </Part>
    );
  const { handle, lastGoodAt, lastFile, stopped } = folder;
  const lastGood =
    lastGoodAt === undefined ? "There is no good one yet." : `The last good one: ${when(lastGoodAt)}.`;
  return (
    <Part title="Automatic backup" ruled>
      {stopped === undefined ? (
        <p role="status">
          After each session a dated file goes into <Name>{handle.name}</Name>; the last ten stay. {lastGood}
          {lastFile !== undefined && (
            <>
              {" "}
              <Name>{lastFile}</Name>
            </>
          )}
        </p>
      ) : (
        <div role="alert">
          <Notice
            tone="caution"
            actions={
              <Button variant="primary" size="between" disabled={isBusy} onClick={() => void allow()}>
                Allow again
              </Button>
            }
          >
            <p>
              <strong>Automatic backup has stopped:</strong> {stopped}. {lastGood}
            </p>
          </Notice>
        </div>
      )}
      <div className={styles["buttons"]}>
        {stopped === undefined && (
          <Button size="between" disabled={isBusy} onClick={() => void backUp()}>
            Back up now
          </Button>
        )}
        <Button size="between" disabled={isBusy} onClick={() => void choose()}>
          Choose another folder
        </Button>
        <Button
          size="between"
          disabled={isBusy}
          onClick={() => void shelfWrite((shelf) => forgetBackupFolder(shelf, folder.logbook))}
        >
          End automatic backup
        </Button>
      </div>
      <LookIntoFolder folder={folder} titles={titles} />
    </Part>
  );
}
