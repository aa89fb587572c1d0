import type { Reading } from "#domain";

/** One of a few words a field takes. */
export interface ChoiceWord<T extends string> {
  readonly value: T;
  /** Other words for it, such as stand in tables from elsewhere. */
  readonly also?: readonly string[];
}

/** What a field for one of a few words wants to know. */
export interface Choices<T extends string> {
  /** The field's label, for the message: "Turns". */
  readonly name: string;
  readonly words: readonly ChoiceWord<T>[];
  /** What may stand there besides, for the message: "a length such as 250". */
  readonly or?: string;
}

/**
 * Reads one of a few words, which may be shortened as long as it is clear which is meant. Capitals do not count. Empty
 * is "not known".
 * @returns the word, or what is wrong and what would be right
 * @example readChoice("h", { name: "Kind", words: [{ value: "hairpin" }, { value: "slow" }] }) // "hairpin"
 */
export function readChoice<T extends string>(
  text: string,
  { name, words, or }: Choices<T>,
): Reading<{ readonly value: T | undefined }> {
  const typed = text.trim().toLowerCase();
  if (typed === "") return { ok: true, value: undefined };
  const isExact = ({ value, also = [] }: ChoiceWord<T>) => [value, ...also].includes(typed);
  const begins = ({ value, also = [] }: ChoiceWord<T>) =>
    [value, ...also].some((word) => word.startsWith(typed));
  const exact = words.find(isExact);
  const meant = exact === undefined ? words.filter(begins) : [exact];
  const [only] = meant;
  if (only !== undefined && meant.length === 1) return { ok: true, value: only.value };
  const shown = [...text.trim()].length <= 30 ? text.trim() : `${[...text.trim()].slice(0, 30).join("")}…`;
  const choices = (meant.length > 0 ? meant : words).map(({ value }) => value);
  const why = meant.length > 0 ? "may mean several words" : "is none of the words it may be";
  const right = `${choices.slice(0, -1).join(", ")} or ${choices.at(-1)}${or === undefined ? "" : `, or ${or}`}`;
  return {
    ok: false,
    problem: { at: 0, length: text.length, wrong: `${name}: “${shown}” ${why}.`, right: `Write ${right}.` },
  };
}
