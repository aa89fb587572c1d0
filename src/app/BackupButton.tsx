import { useState } from "react";
import { saveBackup, useLogbook } from "#live";
import { Button } from "#ui/Button.tsx";

/** Saves a backup of the open logbook, from wherever something went wrong. */
export function BackupButton() {
  const open = useLogbook();
  const [isBusy, setBusy] = useState(false);
  const save = () => {
    setBusy(true);
    void saveBackup(open, open.entry).finally(() => setBusy(false));
  };
  return (
    <Button disabled={isBusy} onClick={save}>
      Save a backup
    </Button>
  );
}
