import { lapRange } from "#domain";

/** What the readers of single words share. A word is folded text without spaces; places count from its start. */
/** A word of the entry line, and where it begins in the folded line. */
export interface Word {
  readonly text: string;
  readonly start: number;
}

/** How a lap time was written. */
export type TimeForm = "full" | "digits" | "short" | "relative";

/** A time as read: milliseconds, and to how many decimals of a second it is known. */
export interface ReadTime {
  readonly ms: number;
  readonly decimals: number;
  readonly form: TimeForm;
  /** Of a short form: another time ending so is nearly as near to the usual. */
  readonly isUnclear?: boolean | undefined;
}

/** The longest lap there can be, ms: a day and a night. Whatever is longer is a slip of the fingers. */
export const longestMs = lapRange.most;
