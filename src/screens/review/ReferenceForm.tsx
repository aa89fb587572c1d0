import { useEffect, useState } from "react";
import { addReference, type Change, editReference } from "#db";
import { formatLapTime, longestSource, type Preferences, type ReferenceLap } from "#domain";
import { readReferenceLap, type TypedReferenceLap } from "#entry";
import { type DrivenCombo, useDraft, useLogbook, useWriteForm } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Select } from "#ui/Select.tsx";
import { Sheet } from "#ui/Sheet.tsx";
import { sayLapTime } from "#words";
import styles from "./Across.module.css";

type Typed = TypedReferenceLap & { readonly comboId: string };

interface ReferenceFormProps {
  readonly combos: readonly DrivenCombo[];
  /** The one that is changed; absent for a new one. */
  readonly reference?: ReferenceLap;
  readonly preferences: Preferences;
  readonly onClose: () => void;
}

/** Enters a reference lap, or puts one right. What is typed outlives a reload. */
export function ReferenceForm({ combos, reference, preferences, onClose }: ReferenceFormProps) {
  const { surroundings } = useLogbook();
  // One for as long as the form is open, so that pressing twice makes no second reference lap.
  const [newId] = useState(() => surroundings.newId());
  const blank: Typed = {
    comboId: reference?.comboId ?? combos[0]?.id ?? "",
    time: reference === undefined ? "" : formatLapTime(reference.ms, reference.decimals),
    source: reference?.source ?? "",
  };
  const draft = useDraft<Typed>(`reference ${reference?.id ?? "new"}`, blank);
  const reading = readReferenceLap(draft.value, preferences.displayDecimals);
  const { box, field, submit } = useWriteForm({
    typed: draft,
    reading,
    write: (book, read): Promise<Change> => {
      const fields = { comboId: draft.value.comboId, ...read };
      return reference === undefined
        ? addReference(book, { id: newId, ...fields })
        : editReference(book, { id: reference.id, patch: fields, expected: reference });
    },
    isUndoOffered: true,
    onStored: onClose,
  });
  useEffect(() => box.current?.querySelector("select")?.focus(), [box]);

  const cancel = () => {
    draft.set(undefined);
    onClose();
  };
  return (
    <Sheet>
      <form
        ref={box}
        noValidate
        aria-label={reference === undefined ? "New reference lap" : "Change the reference lap"}
        className={styles["form"]}
        onSubmit={submit}
      >
        <HalfTyped of={draft} />
        <Select
          label="Combo"
          options={combos.map(({ id, name }) => ({ value: id, label: name }))}
          {...field("comboId")}
        />
        <Field
          label="Lap time"
          {...field("time")}
          hint={reading.ok ? sayLapTime(reading.value.ms, reading.value.decimals) : "Such as 1:23.456."}
          inputMode="decimal"
          size="between"
        />
        <Field
          label="Where it comes from"
          maxLength={longestSource}
          {...field("source")}
          hint="Who drove it, when, or where it was shown."
          size="between"
        />
        <ButtonRow
          others={
            <Button size="between" onClick={cancel}>
              Cancel
            </Button>
          }
          main={
            <Button type="submit" variant="primary" size="between">
              {reference === undefined ? "Store it" : "Store changes"}
            </Button>
          }
        />
      </form>
    </Sheet>
  );
}
