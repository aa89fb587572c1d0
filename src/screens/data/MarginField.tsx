import { type Measure, readMeasure, writeMeasure } from "#entry";
import { useDraft } from "#live";
import { Field } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";

const margin: Measure = { name: "Margin", unit: "percent", least: 0, most: 100 };

interface MarginFieldProps {
  readonly percent: number;
  readonly onPercent: (percent: number) => void;
}

/** How near the best lap a lap has to be, to count as near it. Stored when the field is left, or by Enter. */
export function MarginField({ percent, onPercent }: MarginFieldProps) {
  const stored = writeMeasure(percent, margin);
  const draft = useDraft("margin", stored);
  const reading = readMeasure(draft.value, margin);
  const store = () => {
    if (!reading.ok) return;
    draft.set(undefined);
    if (reading.value !== undefined && reading.value !== percent) onPercent(reading.value);
  };
  return (
    <>
      <Field
        label="A lap is near the best within"
        unit="percent"
        figures
        inputMode="decimal"
        size="between"
        value={draft.value}
        onChange={draft.set}
        onBlur={store}
        onKeyDown={(event) => event.key === "Enter" && store()}
        problem={reading.ok ? undefined : reading.problem}
      />
      <HalfTyped of={draft} />
    </>
  );
}
