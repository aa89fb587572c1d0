import { type Measure, readMeasure, writeMeasure } from "#entry";
import { useDraft } from "#live";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";

interface StoredMeasureProps {
  readonly draftKey: string;
  readonly measure: Measure;
  readonly value: number | undefined;
  /** Gives undefined when it could not be stored; what was typed then stays. */
  readonly onValue: (value: number | undefined) => Promise<unknown>;
  readonly hint?: string;
}

/** One figure with its unit, stored when the field is left or by Enter; what is wrong stays in the field. */
export function StoredMeasure({ draftKey, measure, value, onValue, hint }: StoredMeasureProps) {
  const draft = useDraft(draftKey, writeMeasure(value, measure));
  const reading = readMeasure(draft.value, measure);
  const store = async () => {
    if (!reading.ok) return;
    if (reading.value === value || (await onValue(reading.value)) !== undefined) draft.set(undefined);
  };
  return (
    <>
      <Field
        label={measure.name}
        unit={measure.unit === "" ? undefined : measure.unit}
        figures
        inputMode="decimal"
        size="between"
        value={draft.value}
        onChange={draft.set}
        onBlur={() => void store()}
        onKeyDown={(event) => {
          if (event.key === "Enter") void store();
        }}
        problem={reading.ok ? undefined : reading.problem}
        hint={hint}
      />
      <HalfTyped of={draft} />
    </>
  );
}
