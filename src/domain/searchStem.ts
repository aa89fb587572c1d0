/** Endings that make another form of one word, the longest first. */
const endings = ["ings", "ing", "ers", "er", "ies", "ied", "es", "ed", "s", "e", "y"] as const;
/** Letters that must be left for a word to be told by them. */
const LEAST = 3;

/**
 * What the forms of one English word begin with, as far as that can be told from its end: "tyre" and "tyres", "brake",
 * "brakes" and "braking". Not a dictionary: it may hold forms apart, and seldom joins two words.
 * @param word as `searchText` writes it
 * @example searchStem("braking") // "brak"
 */
export function searchStem(word: string): string {
  const ending = endings.find((one) => word.endsWith(one) && word.length - one.length >= LEAST);
  return ending === undefined ? word : word.slice(0, -ending.length);
}

/**
 * Whether a word that is looked for stands in a text: as it is typed, begun or inside another, or in another of its forms.
 * @param word one word, as `searchText` writes it
 * @param text as `searchText` writes it
 * @example standsInText("tyres", "new tyre on the left") // true
 */
export function standsInText(word: string, text: string): boolean {
  if (text.includes(word)) return true;
  const stem = searchStem(word);
  return text.split(/[^\p{Letter}\p{Number}]+/u).some((other) => searchStem(other) === stem);
}
