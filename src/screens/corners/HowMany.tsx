import { useState } from "react";
import { editLayout } from "#db";
import type { Layout } from "#domain";
import { type Measure, readMeasure } from "#entry";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import styles from "./Corners.module.css";

const count: Measure = { name: "Corners of a lap", unit: "", least: 1, most: 99, isWhole: true };

/** A layout without corners: what they are for, and the quick way to begin. */
export function HowMany({ layout }: { readonly layout: Layout }) {
  const write = useWrite();
  const [text, setText] = useState("");
  const [isRefused, setRefused] = useState(false);
  const reading = readMeasure(text, count);
  const wrong = reading.ok
    ? { wrong: "The number of corners is missing", right: "Write it, such as 12" }
    : reading.problem;
  const isRight = reading.ok && reading.value !== undefined;
  const add = () => {
    if (!reading.ok || reading.value === undefined) return setRefused(true);
    const corners = Array.from({ length: reading.value }, (_, index) => ({ number: index + 1 }));
    const edit = { layoutId: layout.id, patch: { corners }, expected: layout };
    void write((book) => editLayout(book, edit), { isUndoOffered: true });
  };
  return (
    <>
      <p>
        Nothing is known of this layout’s corners yet. Numbers are enough for a remark such as “off, corner
        5”; a name, the direction, radius, width and angle can follow when you know them.
      </p>
      <form
        noValidate
        className={styles["howMany"]}
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <Field
          label={count.name}
          figures
          inputMode="numeric"
          size="between"
          value={text}
          onChange={(next) => {
            setText(next);
            setRefused(false);
          }}
          problem={isRefused && !isRight ? wrong : undefined}
        />
        <Button type="submit" size="between" variant="primary">
          Number them
        </Button>
      </form>
    </>
  );
}
