import { useRef, useState } from "react";
import type { ShelvedLogbook } from "#db";
import { saveBackup, useLogbook } from "#live";
import { useErasing } from "#state/erasing.ts";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Field } from "#ui/Field.tsx";
import { Name } from "#ui/Name.tsx";
import { counted } from "#words";
import styles from "./Restore.module.css";

const word = "erase everything";

interface EraseDialogProps {
  readonly logbooks: readonly ShelvedLogbook[];
  readonly onClose: () => void;
}

/** Erasing cannot be undone: backups are offered first, and the words have to be typed. */
export function EraseDialog({ logbooks, onClose }: EraseDialogProps) {
  const open = useLogbook();
  const [typed, setTyped] = useState("");
  const [isRefused, setRefused] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const [saved, setSaved] = useState<readonly string[]>([]);
  const own = logbooks.filter(({ kind, openedOn }) => kind === "own" && openedOn.length > 0);
  const confirm = () => {
    if (typed.trim().toLowerCase() !== word) {
      setRefused(true);
      return field.current?.focus();
    }
    useErasing.setState({ isAsked: true });
  };
  const backUp = async (logbook: ShelvedLogbook) => {
    if (await saveBackup(open, logbook)) setSaved((before) => [...before, logbook.name]);
  };
  return (
    <Dialog
      title="Erase everything"
      role="alertdialog"
      focus="actions"
      onClose={onClose}
      actions={
        <>
          <Button size="between" onClick={onClose}>
            Keep everything
          </Button>
          <Button size="between" variant="caution" onClick={confirm}>
            Erase for good
          </Button>
        </>
      }
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
      <Field
        ref={field}
        label={`Type “${word}” to confirm`}
        value={typed}
        onChange={(text) => {
          setTyped(text);
          setRefused(false);
        }}
        autoCapitalize="off"
        size="between"
        problem={isRefused ? { wrong: "Nothing was erased", right: `Type the words ${word}` } : undefined}
      />
    </Dialog>
  );
}
