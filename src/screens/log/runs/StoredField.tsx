import { useEffect, useRef, useState } from "react";
import { formatLapTime, longestText } from "#domain";
import { readTime } from "#entry";
import { useDraft } from "#live";
import { Field, type FieldProps } from "#ui/Field.tsx";
import type { FieldProblem } from "#ui/FieldFrame.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { TextArea } from "#ui/TextArea.tsx";
import { wholeNumber } from "../laps/numbers.ts";

/** What a write gave: its change, or undefined when it failed, which the driver has then been told. */
type Stored = Promise<unknown>;

/**
 * A text on its way into a row: kept at every key, stored when its field is left or its dialog closed, and forgotten
 * only when it is in the book.
 * @param isRight whether the text can be stored; until then it stays as it is
 */
function useStoredText(
  draftKey: string,
  stored: string,
  onStore: (text: string) => Stored,
  isRight: (text: string) => boolean = () => true,
) {
  // Until the row has been read again, what was stored last is shown, not what stood there before.
  const [last, setLast] = useState<{ text: string; instead: string }>();
  const draft = useDraft(draftKey, last?.instead === stored ? last.text : stored);
  const store = async () => {
    const text = draft.value.trim();
    if (text === stored || !isRight(text)) return;
    if ((await onStore(text)) === undefined) return;
    setLast({ text, instead: stored });
    if (now.current.text.trim() === text) draft.set(undefined);
  };
  const now = useRef({ text: draft.value, store });
  now.current = { text: draft.value, store };
  useEffect(() => () => void now.current.store(), []);
  return { text: draft.value, setText: draft.set, store, draft };
}

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
  const { text, setText, store, draft } = useStoredText(draftKey, value ?? "", (next) =>
    onStore(next === "" ? undefined : next),
  );
  return (
    <>
      <Field maxLength={2000} {...rest} value={text} onChange={setText} onBlur={store} />
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
  const { text, setText, store, draft } = useStoredText(draftKey, value, onStore);
  return (
    <>
      <TextArea
        label={label}
        hint={hint}
        value={text}
        maxLength={longestText}
        onChange={setText}
        onBlur={store}
      />
      <HalfTyped of={draft} />
    </>
  );
}

interface FigureOfProps extends StoredFieldProps {
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
function FigureOf({ draftKey, stored, read, onStore, ...rest }: FigureOfProps) {
  const { text, setText, store, draft } = useStoredText(
    draftKey,
    stored,
    async (next) => {
      const reading = read(next);
      return reading.ok ? onStore(reading.value) : undefined;
    },
    (next) => read(next).ok,
  );
  const reading = read(text);
  return (
    <>
      <Field
        {...rest}
        value={text}
        onChange={setText}
        onBlur={store}
        problem={reading.ok ? undefined : reading.problem}
      />
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
    if (text.trim() === "") return { ok: true, value: undefined } as const;
    const time = readTime(text, { displayDecimals });
    return time.ok ? ({ ok: true, value: time.ms } as const) : time;
  };
  return (
    <FigureOf
      {...rest}
      stored={value === undefined ? "" : formatLapTime(value)}
      inputMode="decimal"
      read={read}
    />
  );
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
      stored={value === undefined ? "" : String(value)}
      inputMode="numeric"
      read={(text) => wholeNumber(text, rest.label, most)}
    />
  );
}
