import { readMeasure } from "#entry";
import type { FormField } from "#live";
import { Choice } from "#ui/Choice.tsx";
import { Field } from "#ui/Field.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import type { MeasureField, RigField } from "./rigFields.ts";

interface RigFieldInputProps {
  readonly field: RigField;
  readonly typed: FormField<string>;
}

/** One field of a record, by its kind. */
export function RigFieldInput({ field, typed }: RigFieldInputProps) {
  const { label, hint } = field;
  const shared = { label, ...typed, ...(hint !== undefined && { hint }) };
  if (field.kind === "choice") {
    const options = [...field.options, { value: "", label: "not said" }];
    return <Choice {...shared} size="between" options={options} />;
  }
  if (field.kind === "words")
    return field.isLong ? (
      <TextArea {...shared} rows={2} dir="auto" />
    ) : (
      <Field {...shared} size="between" dir="auto" />
    );
  const { unit } = field.measure;
  const asked = typed.problem === undefined ? questionOf(field, typed.value) : undefined;
  return (
    <Field
      {...shared}
      {...(asked !== undefined && { hint: asked })}
      figures
      size="between"
      inputMode="decimal"
      unit={unit === "" ? undefined : unit}
    />
  );
}

/** What is asked about a figure that can be right, but seldom is. */
function questionOf({ measure, usualMost }: MeasureField, text: string): string | undefined {
  const reading = readMeasure(text, measure);
  if (usualMost === undefined || !reading.ok || (reading.value ?? 0) <= usualMost) return undefined;
  return `More than ${usualMost} ${measure.unit}: is that what stands there? It is stored as typed.`;
}
