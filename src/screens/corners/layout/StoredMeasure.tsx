import type { FieldProblem } from "#domain";
import { type Measure, readMeasure, writeMeasure } from "#entry";
import { useStoredText } from "#live";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";

interface StoredMeasureProps {
  readonly draftKey: string;
  readonly measure: Measure;
  readonly value: number | undefined;
  /** Gives undefined when it could not be stored; what was typed then stays. */
  readonly onValue: (value: number | undefined) => Promise<unknown>;
  /** What is wrong with a figure that is in range but cannot be beside others. */
  readonly refuse?: (value: number) => FieldProblem | undefined;
  readonly hint?: string;
}

/** One figure with its unit, stored when the field is left or by Enter; what is wrong stays in the field. */
export function StoredMeasure({ draftKey, measure, value, onValue, refuse, hint }: StoredMeasureProps) {
  const { field, store, draft } = useStoredText({
    draftKey,
    value,
    stored: writeMeasure(value, measure),
    read: (text) => {
      const reading = readMeasure(text, measure);
      const problem =
        reading.ok && reading.value !== undefined && reading.value !== value
          ? refuse?.(reading.value)
          : undefined;
      return problem === undefined ? reading : { ok: false, problem };
    },
    onStore: onValue,
  });
  return (
    <>
      <Field
        label={measure.name}
        unit={measure.unit === "" ? undefined : measure.unit}
        figures
        inputMode="decimal"
        size="between"
        onKeyDown={(event) => event.key === "Enter" && store()}
        hint={hint}
        {...field}
      />
      <HalfTyped of={draft} />
    </>
  );
}
