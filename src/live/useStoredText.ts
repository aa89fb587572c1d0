import { useEffect, useRef, useState } from "react";
import type { FieldProblem } from "#domain";
import { type Draft, useDraft } from "./useDraft.ts";

interface StoredTextOf<V> {
  /** Where the text is kept until it is stored: "tyres 0192…". */
  readonly draftKey: string;
  /** What is in the book, and as it is written into the field. */
  readonly value: V;
  readonly stored: string;
  /** What a text means; it has no spaces about it. */
  readonly read: (
    text: string,
  ) => { readonly ok: true; readonly value: V } | { readonly ok: false; readonly problem: FieldProblem };
  /** Gives undefined when it could not be stored, which the driver has then been told. */
  readonly onStore: (value: V) => Promise<unknown>;
}

export interface StoredText {
  /** What a field or a text area is given. */
  readonly field: {
    readonly value: string;
    readonly onChange: (text: string) => void;
    readonly onBlur: () => void;
    readonly problem: FieldProblem | undefined;
  };
  readonly store: () => void;
  readonly draft: Draft<string>;
}

/**
 * The one way of a field that is a form of its own: kept at every key, stored when the field is left or its dialog
 * closed, and forgotten only when it is in the book. What cannot be read is said at the field and stays there.
 */
export function useStoredText<V>({ draftKey, value, stored, read, onStore }: StoredTextOf<V>): StoredText {
  // Until the row has been read again, what was stored last is shown, not what stood there before.
  const [last, setLast] = useState<{ readonly text: string; readonly instead: string }>();
  const draft = useDraft(draftKey, last?.instead === stored ? last.text : stored);
  const reading = read(draft.value.trim());
  const store = async () => {
    const text = draft.value.trim();
    if (draft.isEmpty || !reading.ok) return;
    if (reading.value !== value) {
      if ((await onStore(reading.value)) === undefined) return;
      setLast({ text, instead: stored });
    }
    if (now.current.text.trim() === text) draft.set(undefined);
  };
  const now = useRef({ text: draft.value, store });
  now.current = { text: draft.value, store };
  useEffect(() => () => void now.current.store(), []);
  return {
    field: {
      value: draft.value,
      onChange: draft.set,
      onBlur: () => void store(),
      problem: reading.ok ? undefined : reading.problem,
    },
    store: () => void store(),
    draft,
  };
}
