import type { FocusEvent, FormEvent } from "react";
import { type Change, setCount } from "#db";
import type { Drill, Id } from "#domain";
import { readCount } from "#entry";
import { useDraft, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import styles from "./DrillCount.module.css";

interface TypedCountProps {
  readonly runId: Id;
  readonly drill: Drill;
  readonly corner: number | undefined;
}

/** How many tries of a drill worked, typed as a whole; left, it is stored, and what cannot be read stays and outlives the page. */
export function TypedCount({ runId, drill, corner }: TypedCountProps) {
  const draft = useDraft(`count ${runId} ${drill} ${corner ?? ""}`, "");
  const reading = readCount(draft.value);
  const { box, field, submit } = useWriteForm<
    { readonly count: string },
    { readonly good: number; readonly tries: number },
    Change
  >({
    typed: { value: { count: draft.value }, set: (typed) => draft.set(typed?.count) },
    reading: reading.ok
      ? { ok: true, value: { good: reading.good, tries: reading.tries } }
      : { ok: false, problems: { count: reading.problem } },
    write: (book, counted) => setCount(book, { runId, drill, corner, ...counted }),
    isUndoOffered: true,
  });
  // Left, it is stored; what is pressed once nothing is typed any more asks for nothing.
  const isTyped = draft.value.trim() !== "";
  const store = (press: FormEvent | FocusEvent) => (isTyped ? submit(press) : press.preventDefault());
  return (
    <form ref={box} noValidate className={styles["typed"]} onSubmit={store}>
      <Field
        label="Or as a whole"
        labelHidden
        size="between"
        inputMode="decimal"
        placeholder="7 of 10"
        className={styles["field"]}
        {...field("count")}
        onBlur={(left) => reading.ok && store(left)}
      />
      <Button type="submit" size="between">
        Count
      </Button>
      <HalfTyped of={draft} />
    </form>
  );
}
