import type { ReactNode } from "react";
import { useForm, useTyped } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
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
  const words = word.includes(" ") ? "words" : "word";
  const missing = { wrong: notDone, right: `Type the ${words} ${word}` };
  const typed = useTyped({ word: "" });
  const isThere = typed.value.word.trim().toLowerCase() === word;
  const { box, field, submit } = useForm<{ readonly word: string }, string, HTMLDivElement>({
    typed,
    reading: isThere ? { ok: true, value: word } : { ok: false, problems: { word: missing } },
    onRead: () => onAct(),
  });
  return (
    <Dialog
      title={title}
      role="alertdialog"
      focus="actions"
      onClose={onClose}
      actions={
        <ButtonRow
          others={
            <>
              <Button size="between" onClick={onClose}>
                {keep}
              </Button>
              {between}
            </>
          }
          main={
            <Button size="between" variant="caution" onClick={submit}>
              {act}
            </Button>
          }
        />
      }
    >
      {children}
      <div ref={box}>
        <Field label={`Type “${word}” to confirm`} autoCapitalize="off" size="between" {...field("word")} />
      </div>
    </Dialog>
  );
}
