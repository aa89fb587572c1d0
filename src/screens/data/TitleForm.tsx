import { useEffect, useRef, useState } from "react";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./LogbooksPart.module.css";
import { wrongTitle } from "./titles.ts";

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
  const [title, setTitle] = useState(start);
  const [isRefused, setRefused] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  const isPlaced = onCancel !== undefined;
  useEffect(() => {
    const input = form.current?.querySelector("input");
    if (!isPlaced || !input) return;
    input.focus();
    input.select();
  }, [isPlaced]);
  const submit = async () => {
    if (wrongTitle(title) !== undefined) return setRefused(true);
    if (await onTitle(title.trim())) setTitle("");
  };
  return (
    <form
      ref={form}
      className={styles["buttons"]}
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
    >
      <div className={styles["name"]}>
        <Field
          label={label}
          value={title}
          onChange={(next) => {
            setTitle(next);
            setRefused(false);
          }}
          problem={isRefused ? wrongTitle(title) : undefined}
          size="between"
          dir="auto"
        />
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
