/**
 * Words that stay on one line: what is read as one figure is not to break between its parts.
 * @example unbroken("9 h 56 min"), with spaces that do not break
 */
export function unbroken(text: string): string {
  return text.replaceAll(" ", "\u00a0");
}

/** Between the parts of a list; a line may end in it, and never begins with it. */
export const betweenParts = "\u00a0· ";
