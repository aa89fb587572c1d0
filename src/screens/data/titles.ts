import type { FormReading } from "#domain";

const longest = 200;

/** Reads the name of a logbook, or says what is wrong with it. */
export function readTitle(typed: string): FormReading<string, "title"> {
  const title = typed.trim();
  const { length } = [...title];
  const refused = (problem: string) => ({ ok: false, problems: { title: problem } }) as const;
  if (length === 0) return refused("A logbook needs a name. Write one, for example “Evenings”.");
  if (length > longest)
    return refused(
      `The name has ${length} signs; at most ${longest} are kept. Take off ${length - longest}.`,
    );
  return { ok: true, value: title };
}

/** The title, with a number behind it when another logbook has it already. */
export function freeTitle(title: string, taken: readonly string[]): string {
  const wanted = title.trim() || "Restored logbook";
  const isTaken = (one: string) => taken.includes(one);
  if (!isTaken(wanted)) return wanted;
  const numbers = Array.from({ length: taken.length }, (_, index) => `${wanted} (${index + 2})`);
  return numbers.find((one) => !isTaken(one)) ?? wanted;
}
