import type { Logbook, Shelf } from "#db";
import type { ReadSource } from "./readSource.ts";

/** How far an errand is: what it does now, and the share of that which is done, where it can be told. */
export interface Progress {
  readonly step: string;
  readonly share?: number;
}

/** What an errand works with. */
export interface ErrandTools {
  readonly book: Logbook;
  readonly shelf: Shelf;
  /** Reads the file the errand is about; one that was looked at before is not read again. */
  readonly readFile: ReadSource;
  readonly tell: (progress: Progress) => void;
  readonly signal: AbortSignal;
}

/** Long work on a file or the whole logbook, done off the page; details and result can be cloned between threads. */
export type Errand<Details, Result> = (details: Details, tools: ErrandTools) => Promise<Result>;
