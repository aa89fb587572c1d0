import { type FormEvent, useEffect, useRef, useState } from "react";
import { addReference, editReference } from "#db";
import { formatLapTime, type Preferences, type ReferenceLap } from "#domain";
import { type DrivenCombo, useDraft, useLogbook, useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Select } from "#ui/Select.tsx";
import { Sheet } from "#ui/Sheet.tsx";
import { sayLapTime } from "#words";
import styles from "./Across.module.css";
import { readReference, type TypedReference } from "./typedReference.ts";

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
  const write = useWrite();
  const form = useRef<HTMLFormElement>(null);
  // One for as long as the form is open, so that pressing twice makes no second reference lap.
  const [newId] = useState(() => surroundings.newId());
  const [refusals, setRefusals] = useState(0);
  const blank: TypedReference = {
    comboId: reference?.comboId ?? combos[0]?.id ?? "",
    time: reference === undefined ? "" : formatLapTime(reference.ms, reference.decimals),
    source: reference?.source ?? "",
  };
  const draft = useDraft<TypedReference>(`reference ${reference?.id ?? "new"}`, blank);
  const typed = draft.value;
  const set = (patch: Partial<TypedReference>) => draft.set({ ...typed, ...patch });
  const { reference: read, problems } = readReference(typed, preferences.displayDecimals);
  const shown = refusals > 0 ? problems : {};

  useEffect(() => {
    form.current?.querySelector<HTMLElement>("select")?.focus();
  }, []);
  useEffect(() => {
    if (refusals > 0) form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }, [refusals]);

  const close = () => {
    draft.set(undefined);
    onClose();
  };
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (read === undefined) return setRefusals(refusals + 1);
    const { comboId } = typed;
    const change = await write(
      (book) =>
        reference === undefined
          ? addReference(book, { id: newId, comboId, ...read })
          : editReference(book, { id: reference.id, patch: { comboId, ...read }, expected: reference }),
      { isUndoOffered: true },
    );
    if (change !== undefined) close();
  };
  return (
    <Sheet>
      <form
        ref={form}
        noValidate
        aria-label={reference === undefined ? "New reference lap" : "Change the reference lap"}
        className={styles["form"]}
        onSubmit={(event) => void submit(event)}
      >
        <HalfTyped of={draft} />
        <Select
          label="Combo"
          value={typed.comboId}
          options={combos.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(comboId) => set({ comboId })}
        />
        <Field
          label="Lap time"
          value={typed.time}
          onChange={(time) => set({ time })}
          hint={read === undefined ? "Such as 1:23.456." : sayLapTime(read.ms, read.decimals)}
          problem={shown.time}
          inputMode="text"
          size="between"
        />
        <Field
          label="Where it comes from"
          value={typed.source}
          onChange={(source) => set({ source })}
          hint="Who drove it, when, or where it was shown."
          problem={shown.source}
          size="between"
        />
        <div className={styles["buttons"]}>
          <Button type="submit" variant="primary" size="between">
            {reference === undefined ? "Store it" : "Store changes"}
          </Button>
          <Button size="between" onClick={close}>
            Cancel
          </Button>
        </div>
      </form>
    </Sheet>
  );
}
