const longest = 200;

/** What is wrong with the name of a logbook; undefined when nothing is. */
export function wrongTitle(title: string): string | undefined {
  const length = [...title.trim()].length;
  if (length === 0) return "A logbook needs a name. Write one, for example “Evenings”.";
  return length > longest
    ? `The name has ${length} signs; at most ${longest} are kept. Take off ${length - longest}.`
    : undefined;
}

/** The title, with a number behind it when another logbook has it already. */
export function freeTitle(title: string, taken: readonly string[]): string {
  const wanted = title.trim() || "Restored logbook";
  const isTaken = (one: string) => taken.includes(one);
  if (!isTaken(wanted)) return wanted;
  const numbers = Array.from({ length: taken.length }, (_, index) => `${wanted} (${index + 2})`);
  return numbers.find((one) => !isTaken(one)) ?? wanted;
}
