import { useRef, useState } from "react";
import type { ShelvedLogbook } from "#db";
import { saveBackup, useLogbook, useRemoveLogbook } from "#live";
import { useDevice } from "#state/device.ts";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Field } from "#ui/Field.tsx";
import { Name } from "#ui/Name.tsx";

const word = "remove";

/** Removing a logbook cannot be undone: a backup is offered first, and a word has to be typed. */
export function RemoveDialog(props: { readonly logbook: ShelvedLogbook; readonly onClose: () => void }) {
  const { logbook, onClose } = props;
  const open = useLogbook();
  const remove = useRemoveLogbook();
  const sessions = useDevice(({ markers }) => markers[logbook.name]?.sessions ?? 0);
  const [typed, setTyped] = useState("");
  const [isRefused, setRefused] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const [isSaved, setSaved] = useState(false);
  const hasRows = logbook.openedOn.length > 0;
  const confirm = () => {
    if (typed.trim().toLowerCase() !== word) {
      setRefused(true);
      return field.current?.focus();
    }
    onClose();
    void remove(logbook);
  };
  return (
    <Dialog
      title="Remove a logbook"
      role="alertdialog"
      focus="actions"
      onClose={onClose}
      actions={
        <>
          <Button size="between" onClick={onClose}>
            Keep it
          </Button>
          {hasRows && (
            <Button size="between" onClick={() => void saveBackup(open, logbook).then(setSaved)}>
              {isSaved ? "Save the backup again" : "Save a backup first"}
            </Button>
          )}
          <Button size="between" variant="caution" onClick={confirm}>
            Remove for good
          </Button>
        </>
      }
    >
      <p>
        <Name>{logbook.title}</Name>
        {sessions > 0 && ` with its ${sessions} ${sessions === 1 ? "session" : "sessions"}`} will be gone from
        this browser. This cannot be undone; a backup can bring it back.
      </p>
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
        problem={
          isRefused ? { wrong: "The logbook was not removed", right: `Type the word ${word}` } : undefined
        }
      />
    </Dialog>
  );
}
