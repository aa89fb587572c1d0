/**
 * A number with its thing, singular or plural.
 * @example counted(1, "lap") // "1 lap"
 * @example counted(3, "session") // "3 sessions"
 */
export function counted(number: number, thing: string): string {
  return `${number} ${number === 1 ? thing : `${thing}s`}`;
}

/**
 * A list in words.
 * @example listed(["4", "7", "9"]) // "4, 7 and 9"
 * @example listed(["8", "11"], "or") // "8 or 11"
 */
export function listed(parts: readonly string[], last: "and" | "or" = "and"): string {
  if (parts.length < 2) return parts.join("");
  return `${parts.slice(0, -1).join(", ")} ${last} ${parts.at(-1)}`;
}

/** The sentence with a capital letter. */
export function asSentence(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** The sentence as it stands after a colon. */
export function lower(text: string): string {
  return text.slice(0, 1).toLowerCase() + text.slice(1);
}

const small = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/**
 * A number as it is spoken: a word up to ten, figures beyond.
 * @example inWords(4) // "four"
 */
export function inWords(number: number): string {
  return small[number] ?? String(number);
}
