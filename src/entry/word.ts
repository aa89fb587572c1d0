/** What the readers of single words share. A word is folded text without spaces; places count from its start. */
import { formatLapTime, type Problem } from "#domain";

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
}

/** Ends before this, in ms: a lap has at most two digits of hours. */
export const longestMs = 360_000_000;

/** A refusal as a `Reading`. */
export function refuse(at: number, length: number, wrong: string, right: string) {
  return { ok: false, problem: { at, length, wrong, right } } as const;
}

/** The same problem, further along in a longer text. */
export function shifted(problem: Problem, by: number): Problem {
  return { ...problem, at: problem.at + by };
}

/** Typed text as it may stand inside a sentence. */
export function quoted(text: string): string {
  const signs = [...text];
  return `“${signs.length <= 30 ? text : `${signs.slice(0, 30).join("")}…`}”`;
}

/** "a, b or c" */
export function either(options: readonly string[]): string {
  const last = options.at(-1) ?? "";
  return options.length < 2 ? last : `${options.slice(0, -1).join(", ")} or ${last}`;
}

/** A time with its minute, whatever its length, so that it reads the same wherever it is typed: "0:59.120". */
export function wholeTime(ms: number, decimals: number): string {
  const shown = formatLapTime(ms, decimals);
  return ms >= 60_000 ? shown : `0:${ms < 10_000 ? "0" : ""}${shown}`;
}
