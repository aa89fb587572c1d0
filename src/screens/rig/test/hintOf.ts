import type { FieldProblem } from "#domain";
import { sayProblem } from "#ui/FieldFrame.tsx";

/**
 * What stands at a number as it is typed: what is wrong with it, for then nothing says what the test takes; else the hint.
 * @param said the problem that the form names already
 */
export function hintOf(
  read: { readonly problem?: FieldProblem } | undefined,
  hint: string,
  said: FieldProblem | undefined,
): string {
  const problem = said === undefined ? read?.problem : undefined;
  if (problem === undefined) return hint;
  return sayProblem(problem);
}
