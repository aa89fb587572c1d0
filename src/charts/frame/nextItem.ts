/**
 * Where a key leads in a menu: up and down go round, Home and End to the ends, a letter to the next item that begins
 * with it (ARIA Authoring Practices, menu button).
 * @param at the item the focus is on, from 0
 * @returns undefined for keys that lead nowhere
 */
export function nextItem(key: string, at: number, words: readonly string[]): number | undefined {
  const { length } = words;
  switch (key) {
    case "ArrowDown":
      return (at + 1) % length;
    case "ArrowUp":
      return (at + length - 1) % length;
    case "Home":
      return 0;
    case "End":
      return length - 1;
  }
  if (key.length !== 1) return undefined;
  const after = words.map((_, step) => (at + 1 + step) % length);
  return after.find((item) => words[item]?.toLowerCase().startsWith(key.toLowerCase()));
}
