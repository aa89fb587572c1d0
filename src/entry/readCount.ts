import type { Reading } from "#domain";

/** Tries of a drill in one run: more is a slip. Common practice, no source. */
const MOST = 999;

const right = "Write how many worked, of how many tries: 7 of 10, or 7/10.";

/**
 * Reads how many tries of a drill worked: "7 of 10", "7/10", "7 10". "0 of 0" is none.
 */
export function readCount(text: string): Reading<{ readonly good: number; readonly tries: number }> {
  const [, first = "", second = ""] = /^\s*(\d{1,6})\s*(?:of|[/\s.,:;-])\s*(\d{1,6})\s*$/i.exec(text) ?? [];
  const refuse = (wrong: string, instead = right) =>
    ({ ok: false, problem: { at: 0, length: text.length, wrong, right: instead } }) as const;
  const typed = text.trim();
  if (typed === "") return refuse("Nothing is written here.");
  if (second === "") return refuse(`“${typed.slice(0, 40)}” is no count.`);
  const [good, tries] = [Number(first), Number(second)];
  if (tries > MOST) return refuse(`${tries} tries are too many for one run.`, `${MOST} is the most.`);
  if (good > tries)
    return refuse(
      `${good} of ${tries}: more worked than were tried.`,
      `Write ${tries} of ${good}, or other numbers.`,
    );
  return { ok: true, good, tries };
}
