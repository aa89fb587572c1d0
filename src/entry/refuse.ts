/** How a reader refuses: the problem as a value, and the pieces its sentences are made of. */
import type { Problem } from "#domain";

/** A refusal as a `Reading`. */
export function refuse(at: number, length: number, wrong: string, right: string) {
  return { ok: false, problem: { at, length, wrong, right } } as const;
}

/** A refusal of a text that may mean one of several. */
export function refuseUnclear(text: string, wrong: string, choices: readonly string[]) {
  const right = `Write ${either(choices)}.`;
  return { ok: false, problem: { at: 0, length: text.length, wrong, right, choices } } as const;
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
