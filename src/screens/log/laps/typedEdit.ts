import type { FormReading } from "#domain";
import { type EntryContext, parseEntry } from "#entry";

/** A lap as it is being put right, in the words of the entry line. */
export interface TypedEdit {
  readonly text: string;
}

/** What an edit means. */
export type ReadEdit = Extract<ReturnType<typeof parseEntry>, { readonly ok: true }>;

/** Reads the edit of a lap, or says what is wrong with it. */
export function readEdit(text: string, context: EntryContext): FormReading<ReadEdit, keyof TypedEdit> {
  const reading = parseEntry(text, context);
  return reading.ok ? { ok: true, value: reading } : { ok: false, problems: { text: reading.problem } };
}
