import type { ReadOnlyLogbook } from "#db";

/**
 * Figures that are worked out off the page: reads rows, calls one report, gives plain data that can be cloned between
 * threads.
 */
export type JobRun<Details, Result> = (book: ReadOnlyLogbook, details: Details) => Promise<Result>;

/** A text that is another one whenever the figures of a job could be: a cheap live query that awaits nothing but the book. */
export type JobMark<Details> = (book: ReadOnlyLogbook, details: Details) => Promise<string>;
