import type { Id } from "#domain";

/** A row of the derived table that tells of changes. */
export interface ChangeMark {
  /** A combo, or the table of rows that are no one combo's: see `markedBy`. */
  readonly id: Id;
  /** Another one after every change; none ever comes again. */
  readonly mark: Id;
}

/** A row of the derived table of answers that cost long computing. */
export interface KeptAnswer {
  /** The combo and the question. */
  readonly id: string;
  /** `markOfCombo` of the rows it was computed from. */
  readonly mark: string;
  /** Of the method it was computed by. */
  readonly version: string;
  readonly answer: unknown;
}

/** Tables that are made from the others: never backed up, never merged. */
export const derivedTables: readonly string[] = ["digests", "changeMarks", "keptAnswers"];
