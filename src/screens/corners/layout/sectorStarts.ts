import type { Corner, Reading } from "#domain";

/** The corners with which sectors 2, 3, … begin, as text: "4, 8". Empty where the sectors of corners do not say. */
export function sectorStarts(corners: readonly Corner[]): string {
  const starts: number[] = [];
  let last = 1;
  for (const { number, sector } of corners) {
    if (sector === undefined || sector < last || sector > last + 1) return "";
    if (sector > last) starts.push(number);
    last = sector;
  }
  return starts.join(", ");
}

/**
 * Reads which corners begin a sector: their numbers in the order of the lap, one less than there are sectors.
 * @param sectors how many sectors the layout has, where that is known
 */
export function readSectorStarts(
  text: string,
  corners: readonly Corner[],
  sectors: number | undefined,
): Reading<{ readonly starts: readonly number[] }> {
  const refuse = (wrong: string, right: string) =>
    ({ ok: false, problem: { at: 0, length: text.length, wrong, right } }) as const;
  const words = text.split(/[\s,;]+/).filter((word) => word !== "");
  if (words.length === 0) return { ok: true, starts: [] };
  const starts = words.map(Number);
  const odd = words.find((word) => !/^\d{1,3}$/.test(word));
  if (odd !== undefined)
    return refuse(`“${odd.slice(0, 30)}” is not the number of a corner.`, "Write numbers such as 4, 8.");
  const gone = starts.find((start) => corners.every(({ number }) => number !== start));
  if (gone !== undefined)
    return refuse(`There is no corner ${gone}.`, "Write numbers that are in the table.");
  if (starts.some((start, at) => at > 0 && start <= (starts[at - 1] ?? 0)))
    return refuse("The numbers do not rise.", "Write them in the order of the lap.");
  const most = (sectors ?? starts.length + 1) - 1;
  if (starts.length !== most)
    return refuse(
      `${sectors} ${sectors === 1 ? "sector needs" : "sectors need"} ${most} of them, not ${starts.length}.`,
      "Write the first corner of every sector but the first.",
    );
  return { ok: true, starts };
}

/** The sector each corner lies in; the first one begins with the lap. */
export function sectorOf(number: number, starts: readonly number[]): number {
  return 1 + starts.filter((start) => start <= number).length;
}
