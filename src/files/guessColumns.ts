import { nameKeys, searchText } from "#domain";
import { type ColumnKind, columnKinds, sectorOf } from "./columns.ts";
import { looksLikeDate } from "./tableDate.ts";
import { looksLikeTime } from "./tableTime.ts";

/** Names of the logbook: a column of them is known by what stands in it. */
export interface KnownNames {
  readonly cars: readonly string[];
  readonly tracks: readonly string[];
}

/**
 * What each column holds, by the words at its head and, where they say nothing, by its cells: dates, lap times, names
 * of cars and tracks that are known. Each kind is given to one column, the first that fits best; the others are left
 * out until the driver says.
 */
export function guessColumns(
  head: readonly string[] | undefined,
  rows: readonly (readonly string[])[],
  known: KnownNames,
): ColumnKind[] {
  const width = Math.max(head?.length ?? 0, usualWidth(rows));
  const kinds = Array.from({ length: width }, (): ColumnKind => "none");
  const give = (index: number, kind: ColumnKind | undefined) => {
    if (kind !== undefined && kinds[index] === "none" && !kinds.includes(kind)) kinds[index] = kind;
  };
  const cellsOf = (index: number) => rows.map((cells) => cells[index]?.trim() ?? "").filter(Boolean);
  for (const { kind, heads } of columnKinds)
    for (const word of heads) {
      const index = head?.findIndex((text) => plain(text) === plain(word)) ?? -1;
      // "lap" may head the times as well as their numbers.
      const isTimes = kind === "lap" && cellsOf(index).some(looksLikeTime);
      give(index, isTimes ? "time" : kind);
    }
  for (const [index, text] of (head ?? []).entries()) give(index, sectorNamed(text));

  for (const [index] of kinds.entries()) give(index, byCells(cellsOf(index), known));
  return kinds;
}

/** The number of cells most rows have. */
function usualWidth(rows: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  for (const { length } of rows) counts.set(length, (counts.get(length) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || a[0] - b[0])[0]?.[0] ?? 0;
}

/** A head in its plainest form: "Lap_time (s)" is "laptime". */
function plain(text: string): string {
  return searchText(text.replace(/\(.*?\)|\[.*?\]/g, "").replace(/[_.:-]+/g, " ")).replaceAll(" ", "");
}

function sectorNamed(text: string): ColumnKind | undefined {
  const number = /^(?:s|sector|sektor|secteur|split|sect)(\d{1,2})(?:time|s|ms)?$/.exec(plain(text))?.[1];
  const kind = `sector ${Number(number)}` as const;
  return sectorOf(kind) === undefined ? undefined : kind;
}

function byCells(cells: readonly string[], known: KnownNames): ColumnKind | undefined {
  if (cells.length === 0) return undefined;
  const most = (fits: (cell: string) => boolean) => cells.filter(fits).length > 0.6 * cells.length;
  const isOneOf = (names: readonly string[]) => {
    const keyOf = nameKeys();
    const known = new Set(names.map(keyOf));
    return (cell: string) => known.has(keyOf(cell)) || known.has(keyOf(cell.split(",")[0] ?? ""));
  };
  if (most(looksLikeDate)) return "date";
  // 19:05 may be a time of day; a lap time has decimals.
  if (most((cell) => looksLikeTime(cell) && /[.,"”″]\d{1,3}$/.test(cell))) return "time";
  if (most(isOneOf(known.cars))) return "car";
  if (most(isOneOf(known.tracks))) return "track";
  return undefined;
}
