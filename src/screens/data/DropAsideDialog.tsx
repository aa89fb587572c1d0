import { useRef, useState } from "react";
import { dropAside } from "#db";
import type { AsideRow } from "#domain";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Field } from "#ui/Field.tsx";
import { asideThing } from "#words";

const word = "delete";

/** Deleting a row that was set aside cannot be undone, so a word has to be typed. */
export function DropAsideDialog(props: { readonly aside: AsideRow; readonly onClose: () => void }) {
  const { aside, onClose } = props;
  const write = useWrite();
  const [typed, setTyped] = useState("");
  const [isRefused, setRefused] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const confirm = () => {
    if (typed.trim().toLowerCase() !== word) {
      setRefused(true);
      return field.current?.focus();
    }
    onClose();
    void write((book) => dropAside(book, aside));
  };
  return (
    <Dialog
      title="Delete for good"
      role="alertdialog"
      focus="actions"
      onClose={onClose}
      actions={
        <>
          <Button size="between" onClick={onClose}>
            Keep it
          </Button>
          <Button size="between" variant="caution" onClick={confirm}>
            Delete for good
          </Button>
        </>
      }
    >
      <p>
        The <bdi>{asideThing(aside)}</bdi> will be gone from this logbook, and an older backup will not bring
        it back. This cannot be undone; save the rows as a file first if you may need it.
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
        problem={isRefused ? { wrong: "The row was not deleted", right: `Type the word ${word}` } : undefined}
      />
    </Dialog>
  );
}
