import { useState } from "react";
import { useLogbook } from "#live";
import { useNotices } from "#state/notices.ts";
import { Button } from "#ui/Button.tsx";

/** Saves a backup of the open logbook, from wherever something went wrong. What it needs is fetched when pressed. */
export function BackupButton() {
  const open = useLogbook();
  const [isBusy, setBusy] = useState(false);
  const save = async () => {
    setBusy(true);
    try {
      const { saveBackup } = await import("../screens/data/saveBackup.ts");
      await saveBackup(open, open.entry);
    } catch {
      const text =
        "Backup not saved: a part of the app could not be fetched. Reload when the connection is back.";
      useNotices.getState().say({ kind: "fault", text, actions: [] });
    } finally {
      setBusy(false);
    }
  };
  return (
    <Button disabled={isBusy} onClick={save}>
      Save a backup
    </Button>
  );
}
