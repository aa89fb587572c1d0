import { type ReactNode, useRef, useState } from "react";
import { Button } from "#ui/Button.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Field } from "#ui/Field.tsx";

interface TypedWordDialogProps {
  readonly title: string;
  /** What has to be typed, in small letters. */
  readonly word: string;
  /** The way back: "Keep it". */
  readonly keep: string;
  /** What is done for good: "Erase for good". */
  readonly act: string;
  /** Said when the word is not there: "Nothing was erased". */
  readonly notDone: string;
  /** Buttons between the way back and the deed. */
  readonly between?: ReactNode;
  readonly onAct: () => void;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** What cannot be undone is done only once a word has been typed. */
export function TypedWordDialog(props: TypedWordDialogProps) {
  const { title, word, keep, act, notDone, between, onAct, onClose, children } = props;
  const [typed, setTyped] = useState("");
  const [isRefused, setRefused] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const confirm = () => {
    if (typed.trim().toLowerCase() === word) return onAct();
    setRefused(true);
    return field.current?.focus();
  };
  const words = word.includes(" ") ? "words" : "word";
  return (
    <Dialog
      title={title}
      role="alertdialog"
      focus="actions"
      onClose={onClose}
      actions={
        <>
          <Button size="between" onClick={onClose}>
            {keep}
          </Button>
          {between}
          <Button size="between" variant="caution" onClick={confirm}>
            {act}
          </Button>
        </>
      }
    >
      {children}
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
        problem={isRefused ? { wrong: notDone, right: `Type the ${words} ${word}` } : undefined}
      />
    </Dialog>
  );
}
