import { readMeasure } from "#entry";
import { Choice } from "#ui/Choice.tsx";
import { Field } from "#ui/Field.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import type { MeasureField, RigField } from "./rigFields.ts";
import type { RigProblem } from "./rigTexts.ts";

interface RigFieldInputProps {
  readonly field: RigField;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly problem: RigProblem | undefined;
}

/** One field of a record, by its kind. */
export function RigFieldInput({ field, text, onText, problem }: RigFieldInputProps) {
  const { label, hint } = field;
  const shared = { label, problem, ...(hint !== undefined && { hint }) };
  if (field.kind === "choice") {
    const options = [...field.options, { value: "", label: "not said" }];
    return <Choice {...shared} size="between" value={text} options={options} onChange={onText} />;
  }
  if (field.kind === "words")
    return field.isLong ? (
      <TextArea {...shared} rows={2} dir="auto" value={text} onChange={onText} />
    ) : (
      <Field {...shared} size="between" dir="auto" value={text} onChange={onText} />
    );
  const { unit } = field.measure;
  const asked = problem === undefined ? questionOf(field, text) : undefined;
  return (
    <Field
      {...shared}
      {...(asked !== undefined && { hint: asked })}
      figures
      size="between"
      inputMode="decimal"
      unit={unit === "" ? undefined : unit}
      value={text}
      onChange={onText}
    />
  );
}

/** What is asked about a figure that can be right, but seldom is. */
function questionOf({ measure, usualMost }: MeasureField, text: string): string | undefined {
  const reading = readMeasure(text, measure);
  if (usualMost === undefined || !reading.ok || (reading.value ?? 0) <= usualMost) return undefined;
  return `More than ${usualMost} ${measure.unit}: is that what stands there? It is stored as typed.`;
}
