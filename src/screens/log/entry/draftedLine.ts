import type { NewLap } from "#db";
import type { Id } from "#domain";

/** A line on its way into the book, or one that did not get there. What it was read as is what is stored. */
export interface Line {
  readonly id: Id;
  readonly runId: Id;
  readonly text: string;
  readonly lap: NewLap;
  readonly fault?: string;
}

/** What is kept of the entry line at every key. */
export interface DraftedLine {
  readonly text: string;
  /** The run in which the text was begun; absent in what an older version of the app kept. */
  readonly begunIn?: Id | undefined;
  /** The run that the driver chose for it once that one was over. */
  readonly into?: Id | undefined;
  readonly lines: readonly Line[];
  /** Several lines pasted and not yet taken, and the run in which they were. */
  readonly pasted?: string | undefined;
  readonly pastedIn?: Id | undefined;
  /** What Escape took out of the field, until it is brought back or a lap is added. */
  readonly emptied?: string | undefined;
}

/** What a half-typed line would be known by; empty where nothing is half typed. */
export function lineWords({ text, pasted }: DraftedLine): string {
  const line = text.trim();
  return line !== "" || pasted === undefined ? line : (pasted.trim().split(/[\r\n]+/)[0] ?? "");
}

/** The same, with the lines that could not be stored. */
export function everyLine(drafted: DraftedLine): string {
  const unstored = drafted.lines.filter(({ fault }) => fault !== undefined).map(({ text }) => text);
  return [...unstored, lineWords(drafted)].filter((words) => words !== "").join(" · ");
}
