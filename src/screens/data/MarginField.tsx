import { type Measure, readMeasure, writeMeasure } from "#entry";
import { useStoredText } from "#live";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";

const margin: Measure = { name: "Margin", unit: "percent", least: 0, most: 100 };

interface MarginFieldProps {
  readonly percent: number;
  /** Gives undefined when it could not be stored. */
  readonly onPercent: (percent: number) => Promise<unknown>;
}

/** How near the best lap a lap has to be, to count as near it. Stored when the field is left, or by Enter. */
export function MarginField({ percent, onPercent }: MarginFieldProps) {
  const { field, store, draft } = useStoredText({
    draftKey: "margin",
    value: percent,
    stored: writeMeasure(percent, margin),
    // There is always one: an emptied field is the one there was.
    read: (text) => {
      const reading = readMeasure(text, margin);
      return reading.ok ? { ok: true, value: reading.value ?? percent } : reading;
    },
    onStore: onPercent,
  });
  return (
    <>
      <Field
        label="A lap is near the best within"
        unit="percent"
        figures
        inputMode="decimal"
        size="between"
        onKeyDown={(event) => event.key === "Enter" && store()}
        {...field}
      />
      <HalfTyped of={draft} />
    </>
  );
}
