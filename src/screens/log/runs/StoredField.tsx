import { type FieldProblem, formatLapTime, longestText } from "#domain";
import { readTime } from "#entry";
import { useStoredText } from "#live";
import { Field, type FieldProps } from "#ui/Field.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { wholeNumber } from "../laps/numbers.ts";

/** What a write gave: its change, or undefined when it failed, which the driver has then been told. */
type Stored = Promise<unknown>;

interface StoredFieldProps extends Omit<FieldProps, "value" | "onChange" | "onBlur" | "problem"> {
  /** Where the text is kept until it is stored: "tyres 0192…". */
  readonly draftKey: string;
}

interface TextOfProps extends StoredFieldProps {
  readonly value: string | undefined;
  readonly onStore: (value: string | undefined) => Stored;
}

/** Words that belong to a row. */
export function TextOf({ draftKey, value, onStore, ...rest }: TextOfProps) {
  const read = (text: string) => ({ ok: true, value: text === "" ? undefined : text }) as const;
  const { field, draft } = useStoredText({ draftKey, value, stored: value ?? "", read, onStore });
  return (
    <>
      <Field maxLength={2000} {...rest} {...field} />
      <HalfTyped of={draft} />
    </>
  );
}

interface NoteOfProps {
  readonly label: string;
  readonly hint?: string;
  readonly draftKey: string;
  readonly value: string;
  readonly onStore: (value: string) => Stored;
}

/** Several lines of words that belong to a row. */
export function NoteOf({ label, hint, draftKey, value, onStore }: NoteOfProps) {
  const read = (text: string) => ({ ok: true, value: text }) as const;
  const { field, draft } = useStoredText({ draftKey, value, stored: value, read, onStore });
  return (
    <>
      <TextArea label={label} hint={hint} maxLength={longestText} {...field} />
      <HalfTyped of={draft} />
    </>
  );
}

interface FigureOfProps extends StoredFieldProps {
  readonly value: number | undefined;
  /** As it is written into the field. */
  readonly stored: string;
  /** What a text means; an empty one is none. */
  readonly read: (
    text: string,
  ) =>
    | { readonly ok: true; readonly value: number | undefined }
    | { readonly ok: false; readonly problem: FieldProblem };
  readonly onStore: (value: number | undefined) => Stored;
}

/** A figure that belongs to a row; what is none is said at the field and kept there. */
function FigureOf({ draftKey, value, stored, read, onStore, ...rest }: FigureOfProps) {
  const { field, draft } = useStoredText({ draftKey, value, stored, read, onStore });
  return (
    <>
      <Field {...rest} {...field} />
      <HalfTyped of={draft} />
    </>
  );
}

interface TimeOfProps extends StoredFieldProps {
  /** Milliseconds. */
  readonly value: number | undefined;
  readonly displayDecimals: number;
  readonly onStore: (ms: number | undefined) => Stored;
}

/** A lap time that belongs to a row. */
export function TimeOf({ value, displayDecimals, ...rest }: TimeOfProps) {
  const read = (text: string) => {
    if (text === "") return { ok: true, value: undefined } as const;
    const time = readTime(text, { displayDecimals });
    return time.ok ? ({ ok: true, value: time.ms } as const) : time;
  };
  const stored = value === undefined ? "" : formatLapTime(value);
  return <FigureOf {...rest} value={value} stored={stored} inputMode="decimal" read={read} />;
}

interface NumberOfProps extends StoredFieldProps {
  readonly value: number | undefined;
  readonly most: number;
  readonly onStore: (value: number | undefined) => Stored;
}

/** A whole number that belongs to a row. */
export function NumberOf({ value, most, ...rest }: NumberOfProps) {
  return (
    <FigureOf
      {...rest}
      value={value}
      stored={value === undefined ? "" : String(value)}
      inputMode="numeric"
      read={(text) => wholeNumber(text, rest.label, most)}
    />
  );
}
