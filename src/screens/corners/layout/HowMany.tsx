import { editLayout } from "#db";
import type { FormReading, Layout } from "#domain";
import { type Measure, readMeasure } from "#entry";
import { useTyped, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./Layout.module.css";

const isMissing = { wrong: "The number of corners is missing", right: "Write it, such as 12" };
const count: Measure = { name: "Corners of a lap", unit: "", least: 1, most: 99, isWhole: true };

interface HowManyProps {
  readonly layout: Layout;
  /** They are numbered. */
  readonly onNumbered: () => void;
}

/** A layout without corners: what they are for, and the quick way to begin. */
export function HowMany({ layout, onNumbered }: HowManyProps) {
  const typed = useTyped({ text: "" });
  const { box, field, submit } = useWriteForm({
    typed,
    reading: readCount(typed.value.text),
    write: (book, many) => {
      const corners = Array.from({ length: many }, (_, index) => ({ number: index + 1 }));
      return editLayout(book, { layoutId: layout.id, patch: { corners }, expected: layout });
    },
    isUndoOffered: true,
    onStored: onNumbered,
  });
  return (
    <>
      <p>
        Nothing is known of this layout’s corners yet. Their numbers are enough to begin; the kind of bend and
        what follows make the seconds truer, and can come later.
      </p>
      <form ref={box} noValidate className={styles["howMany"]} onSubmit={submit}>
        <Field label={count.name} figures inputMode="numeric" size="between" {...field("text")} />
        <Button type="submit" size="between" variant="primary">
          Number them
        </Button>
      </form>
    </>
  );
}

function readCount(text: string): FormReading<number, "text"> {
  const reading = readMeasure(text, count);
  if (!reading.ok) return { ok: false, problems: { text: reading.problem } };
  return reading.value === undefined
    ? { ok: false, problems: { text: isMissing } }
    : { ok: true, value: reading.value };
}
