import type { FieldProblem } from "#domain";

/** Says that a text is longer than what is kept of it; undefined where it is not. */
export function tooLong(text: string, most: number): FieldProblem | undefined {
  if (text.length <= most) return undefined;
  return { wrong: `${text.length} signs are too many.`, right: `At most ${most} are kept.` };
}
