/** Signs that begin a formula, plain and full-width. */
const formula = "=+\\-@＝＋－＠";
/** At the very start also a blank that some programs pass over. */
const first = `'*[${formula}\\t\\r\\n]`;
/** After a quote or separator another program may begin a new cell. */
const later = `'*[${formula}]`;
const separator = '(?<=[",;|\\t\\r\\n])';
const toGuard = new RegExp(`^(?=${first})|${separator}(?=${later})`, "g");
const guards = new RegExp(`^'(?=${first})|${separator}'(?=${later})`, "g");

/**
 * Text that no spreadsheet takes for a formula: an apostrophe stands before each sign that could begin one.
 * `unguarded` takes exactly those away again.
 * @example guarded("=1+1") // "'=1+1"
 */
export function guarded(text: string): string {
  return text.replace(toGuard, "'");
}

/** Text as it was before `guarded`. */
export function unguarded(text: string): string {
  return text.replace(guards, "");
}
