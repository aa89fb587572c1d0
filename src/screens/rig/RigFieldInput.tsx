import { Choice } from "#ui/Choice.tsx";
import { Field } from "#ui/Field.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import type { RigField } from "./rigFields.ts";
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
  return (
    <Field
      {...shared}
      figures
      size="between"
      inputMode="decimal"
      unit={unit === "" ? undefined : unit}
      value={text}
      onChange={onText}
    />
  );
}
