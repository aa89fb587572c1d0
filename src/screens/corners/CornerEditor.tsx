import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { editCorner } from "#db";
import type { Corner, Id } from "#domain";
import { useDraft, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Choice } from "#ui/Choice.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import styles from "./Corners.module.css";
import { type CornerMeasure, type CornerTexts, cornerMeasures, readCorner, textsOf } from "./cornerFields.ts";

interface CornerEditorProps {
  readonly layoutId: Id;
  readonly corner: Corner;
  readonly onDone: () => void;
  readonly onRemove: () => void;
}

const directions = [
  { value: "left", label: "left" },
  { value: "right", label: "right" },
  { value: "", label: "not said" },
] as const;

/** One corner in its fields. Enter stores, Escape leaves it as it was. */
export function CornerEditor({ layoutId, corner, onDone, onRemove }: CornerEditorProps) {
  const { number } = corner;
  const write = useWrite();
  const draft = useDraft<CornerTexts>(`corner ${layoutId} ${number}`, textsOf(corner));
  const [isRefused, setRefused] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector("input")?.focus(), []);
  const texts = draft.value;
  const reading = readCorner(texts);
  const problems = reading.ok || !isRefused ? {} : reading.problems;
  const change = (patch: Partial<CornerTexts>) => draft.set({ ...texts, ...patch });
  const leave = () => {
    draft.set(undefined);
    onDone();
  };
  const store = async () => {
    if (!reading.ok) return setRefused(true);
    const { patch } = reading;
    if (await write((book) => editCorner(book, { layoutId, number, patch }), { isUndoOffered: true }))
      leave();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return;
    event.stopPropagation();
    leave();
  };
  return (
    <form
      ref={form}
      noValidate
      aria-label={`Corner ${number}`}
      className={styles["editor"]}
      onKeyDown={onKeyDown}
      onSubmit={(event) => {
        event.preventDefault();
        void store();
      }}
    >
      <HalfTyped of={draft} />
      <Field
        label={`Name of corner ${number}`}
        dir="auto"
        size="between"
        value={texts.name}
        onChange={(name) => change({ name })}
        problem={problems.name}
      />
      <Choice
        label="Turns"
        size="between"
        value={texts.direction}
        options={directions}
        onChange={(direction) => change({ direction })}
      />
      <div className={styles["fields"]}>
        {(Object.keys(cornerMeasures) as CornerMeasure[]).map((key) => (
          <Field
            key={key}
            label={cornerMeasures[key].name}
            unit={cornerMeasures[key].unit}
            figures
            inputMode="decimal"
            size="between"
            value={texts[key]}
            onChange={(text) => change({ [key]: text })}
            problem={problems[key]}
          />
        ))}
      </div>
      <div className={styles["buttons"]}>
        <Button type="submit" variant="primary" size="between">
          Store
        </Button>
        <Button size="between" onClick={leave}>
          Cancel
        </Button>
        <Button
          size="between"
          variant="caution"
          onClick={() => {
            draft.set(undefined);
            onRemove();
          }}
        >
          Remove corner {number}
        </Button>
      </div>
    </form>
  );
}
