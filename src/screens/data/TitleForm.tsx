import { useEffect } from "react";
import { useForm, useTyped } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./LogbooksPart.module.css";
import { readTitle } from "./titles.ts";

interface TitleFormProps {
  readonly label: string;
  readonly button: string;
  readonly start: string;
  /** True when it was stored; the field is then empty again. */
  readonly onTitle: (title: string) => Promise<boolean>;
  /** Where given, there is a way out, and the field takes the focus. */
  readonly onCancel?: () => void;
}

/** One field for the name of a logbook. */
export function TitleForm({ label, button, start, onTitle, onCancel }: TitleFormProps) {
  const typed = useTyped({ title: start });
  const { box, field, set, submit } = useForm({
    typed,
    reading: readTitle(typed.value.title),
    onRead: async (read) => {
      if (await onTitle(read)) set({ title: "" });
    },
  });
  const isPlaced = onCancel !== undefined;
  useEffect(() => {
    const input = box.current?.querySelector("input");
    if (!isPlaced || !input) return;
    input.focus();
    input.select();
  }, [isPlaced, box]);
  return (
    <form ref={box} className={styles["buttons"]} onSubmit={submit}>
      <div className={styles["name"]}>
        <Field label={label} size="between" dir="auto" {...field("title")} />
      </div>
      <Button type="submit" size="between">
        {button}
      </Button>
      {onCancel && (
        <Button size="between" variant="quiet" onClick={onCancel}>
          Cancel
        </Button>
      )}
    </form>
  );
}
