import { type KeyboardEvent, useEffect } from "react";
import { editCorner } from "#db";
import type { Corner, Id } from "#domain";
import { useDraft, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
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
  const draft = useDraft<CornerTexts>(`corner ${layoutId} ${number}`, textsOf(corner));
  const { box, field, submit } = useWriteForm({
    typed: draft,
    reading: readCorner(draft.value),
    write: (book, patch) => editCorner(book, { layoutId, number, patch }),
    isUndoOffered: true,
    onStored: onDone,
  });
  useEffect(() => box.current?.querySelector("input")?.focus(), [box]);
  const leave = () => {
    draft.set(undefined);
    onDone();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return;
    event.stopPropagation();
    leave();
  };
  return (
    <form
      ref={box}
      noValidate
      aria-label={`Corner ${number}`}
      className={styles["editor"]}
      onKeyDown={onKeyDown}
      onSubmit={submit}
    >
      <HalfTyped of={draft} />
      <Field label={`Name of corner ${number}`} dir="auto" size="between" {...field("name")} />
      <Choice label="Turns" size="between" options={directions} {...field("direction")} />
      <div className={styles["fields"]}>
        {(Object.keys(cornerMeasures) as CornerMeasure[]).map((key) => (
          <Field
            key={key}
            label={cornerMeasures[key].name}
            unit={cornerMeasures[key].unit}
            figures
            inputMode="decimal"
            size="between"
            {...field(key)}
          />
        ))}
      </div>
      <ButtonRow
        removes={
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
        }
        others={
          <Button size="between" onClick={leave}>
            Cancel
          </Button>
        }
        main={
          <Button type="submit" variant="primary" size="between">
            Store
          </Button>
        }
      />
    </form>
  );
}
