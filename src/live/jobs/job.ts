import type { ReadOnlyLogbook } from "#db";

/** Figures that are worked out off the page. */
export interface Job<Details, Result> {
  /**
   * A text that is another one whenever the figures could be: a cheap live query that awaits nothing but the book.
   */
  readonly mark: (book: ReadOnlyLogbook, details: Details) => Promise<string>;
  /** Reads rows, calls one report, gives plain data that can be cloned between threads. */
  readonly run: (book: ReadOnlyLogbook, details: Details) => Promise<Result>;
}
