/** Laps of a run that follow each other, by their numbers, both ends included; or what is wrong, and at which field. */
export type LapSpan =
  | { readonly ok: true; readonly first: number; readonly last: number }
  | { readonly ok: false; readonly at: "first" | "last"; readonly problem: string };

/**
 * Reads two typed lap numbers.
 * @param last empty means the last lap of the run
 * @param count number of laps in the run
 */
export function lapSpan(first: string, last: string, count: number): LapSpan {
  const from = lapNumber(first, count);
  if (from === undefined) return { ok: false, at: "first", problem: `Write a lap from 1 to ${count}.` };
  const to = last.trim() === "" ? count : lapNumber(last, count);
  if (to === undefined || to < from)
    return { ok: false, at: "last", problem: `Write a lap from ${from} to ${count}, or leave it empty.` };
  return { ok: true, first: from, last: to };
}

/** A typed lap number from 1 to `count`; undefined for anything else. */
export function lapNumber(text: string, count: number): number | undefined {
  const trimmed = text.trim();
  const number = /^\d{1,5}$/.test(trimmed) ? Number(trimmed) : 0;
  return number >= 1 && number <= count ? number : undefined;
}
