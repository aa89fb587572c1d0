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

/** A line that was refused or asked about, and then typed over. */
export interface TypedOver {
  readonly text: string;
  readonly begunIn: Id | undefined;
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
  /** Lines typed over, the last one last: each stays in view until it is taken back or let go. */
  readonly typedOver?: readonly TypedOver[] | undefined;
  /** The text was begun over the last of them. */
  readonly isOver?: boolean | undefined;
}

/** What a half-typed line would be known by, with those typed over; empty where nothing is half typed. */
export function lineWords({ text, pasted, typedOver = [] }: DraftedLine): string {
  const lines = [...typedOver.map((line) => line.text), text].map((line) => line.trim()).filter(Boolean);
  return lines.length > 0 || pasted === undefined
    ? lines.join(" · ")
    : (pasted.trim().split(/[\r\n]+/)[0] ?? "");
}

/** The same, with the lines that could not be stored. */
export function everyLine(drafted: DraftedLine): string {
  const unstored = drafted.lines.filter(({ fault }) => fault !== undefined).map(({ text }) => text);
  return [...unstored, lineWords(drafted)].filter((words) => words !== "").join(" · ");
}
