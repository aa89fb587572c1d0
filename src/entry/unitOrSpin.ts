import { aboutRemark } from "#domain";
import type { Ask } from "./context.ts";
import { refuse } from "./refuse.ts";

/** The only remark whose letter is a unit of time as well. */
const { letter: unit, named } = aboutRemark("spin");
const timeInPrint = `[0-9:.,'"+-]*[:.,'"+-][0-9:.,'"+-]*`;
const unclear = new RegExp(`(?:^| )(${timeInPrint}) +${unit}(?= |$)`);
const endsInPrint = new RegExp(`(?:^| )${timeInPrint}$`);

/**
 * The time that a lone s stands behind with a space, as seconds are printed (ISO 80000-1 sets a space before a unit):
 * it may be that or a spin. Digits alone, as in 4912 s, are typed and never printed, and 1:23.456s has no space.
 * @param head folded text before the note
 * @returns the time, or undefined where the letter is clear
 */
export function unclearUnit(head: string): string | undefined {
  return unclear.exec(head)?.[1];
}

/** The question to whoever typed it. */
export const askUnit: Ask = {
  why: "unit or spin",
  fact: `“${unit}” is read as ${named}; if it means seconds, take it away.`,
  before: `“${unit}” is read as ${named}.`,
  instead: "; if it means seconds, take it away",
};

/** The refusal of a pasted line, which nobody looks at one by one. */
export function refuseUnit(line: string, time: string) {
  return refuse(
    0,
    line.length,
    `“${unit}” behind a space may be ${named} or the unit, seconds.`,
    `Write ${time}${unit} for ${named}, or ${time} alone.`,
  );
}

/** A remark's letters behind what stands before them, so that they are read as the remark. */
export function withRemark(before: string, letters: string): string {
  const isUnit = letters === unit && endsInPrint.test(before);
  return before === "" || isUnit ? `${before}${letters}` : `${before} ${letters}`;
}
