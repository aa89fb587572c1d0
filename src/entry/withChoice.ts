import type { Problem } from "#domain";

/**
 * The line with one of the choices of its problem in its place. Remarks go right behind the time, for an s behind a space
 * and a printed time may be its unit.
 */
export function withChoice(line: string, { at, length }: Problem, choice: string): string {
  const rest = line.slice(at + length).replace(/^\s+(?=\p{L})/u, "");
  return line.slice(0, at) + choice + rest;
}
