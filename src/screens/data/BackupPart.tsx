import { useState } from "react";
import { notedOn, practiceDay } from "#domain";
import { canPack } from "#files";
import { saveBackup, useLogbook, useShelvedNow } from "#live";
import { Button } from "#ui/Button.tsx";
import { Checkbox } from "#ui/Checkbox.tsx";
import { Name } from "#ui/Name.tsx";
import { Part } from "#ui/Part.tsx";
import { isBackupDue, sayBackup } from "./backupWords.ts";

/** One file with all there is in the open logbook, and when the last one was made. */
export function BackupPart() {
  const open = useLogbook();
  const logbook = useShelvedNow();
  const [isBusy, setBusy] = useState(false);
  const [isSmall, setSmall] = useState(false);
  const [now, zone] = [open.surroundings.clock(), open.surroundings.zone()];
  const today = practiceDay(now, zone, 0);
  const { lastBackupAt } = logbook;
  const lastOn = lastBackupAt === undefined ? undefined : notedOn(lastBackupAt, now, zone);
  const save = () => {
    setBusy(true);
    void saveBackup(open, logbook, { isSmall }).finally(() => setBusy(false));
  };
  return (
    <Part title="Backup" ruled>
      <p>
        {sayBackup(logbook, lastOn, today)}
        {isBackupDue(logbook, lastOn, today) && <strong> Save one now.</strong>}
      </p>
      <p>
        <Button variant="primary" size="between" disabled={isBusy} onClick={save}>
          Save a backup
        </Button>
      </p>
      {canPack() && (
        <Checkbox
          label="As a smaller, packed file (.gz)"
          checked={isSmall}
          onChange={setSmall}
          size="between"
        />
      )}
      <p>
        All of <Name>{logbook.title}</Name> in one file, deleted rows too. Keep it on another device as well.
      </p>
    </Part>
  );
}
