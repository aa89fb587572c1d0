import { useState } from "react";
import type { ShelvedLogbook } from "#db";
import { saveBackup, useLogbook } from "#live";
import { useErasing } from "#state/erasing.ts";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { counted } from "#words";
import styles from "./Restore.module.css";
import { TypedWordDialog } from "./TypedWordDialog.tsx";

interface EraseDialogProps {
  readonly logbooks: readonly ShelvedLogbook[];
  readonly onClose: () => void;
}

/** Erasing cannot be undone: backups are offered first, and the words have to be typed. */
export function EraseDialog({ logbooks, onClose }: EraseDialogProps) {
  const open = useLogbook();
  const [saved, setSaved] = useState<readonly string[]>([]);
  const own = logbooks.filter(({ kind, openedOn }) => kind === "own" && openedOn.length > 0);
  const backUp = async (logbook: ShelvedLogbook) => {
    if (await saveBackup(open, logbook)) setSaved((before) => [...before, logbook.name]);
  };
  return (
    <TypedWordDialog
      title="Erase everything"
      word="erase everything"
      keep="Keep everything"
      act="Erase for good"
      notDone="Nothing was erased"
      onAct={() => useErasing.setState({ isAsked: true })}
      onClose={onClose}
    >
      <p>
        {counted(logbooks.length, "logbook")} will be gone from this browser, with all that was typed and
        chosen. This cannot be undone; only backup files can bring logbooks back.
      </p>
      <div className={styles["buttons"]}>
        {own.map((logbook) => (
          <Button key={logbook.name} size="between" onClick={() => void backUp(logbook)}>
            {saved.includes(logbook.name) ? "Saved, save again: " : "Save a backup first: "}
            <Name>{logbook.title}</Name>
          </Button>
        ))}
      </div>
    </TypedWordDialog>
  );
}
