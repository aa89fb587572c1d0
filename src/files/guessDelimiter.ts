import { guessColumns } from "./guessColumns.ts";
import { readCsv } from "./readCsv.ts";
import type { Delimiter } from "./writeCsv.ts";

const sample = 60;
/** Where two fit alike, the one that stands less often inside a cell comes first. */
const candidates: readonly Delimiter[] = ["\t", ";", ","];

/** So many names of columns are no chance. */
const fewestNamed = 3;

/**
 * The sign that stands between the cells: the one that cuts the first row into names of columns, whatever signs the
 * texts below have in them; else the one by which most rows have the same number of cells, at least two.
 * A comma may be a decimal sign, so where a semicolon fits as well it is the semicolon. A table of one column gives
 * the comma, or the semicolon where commas stand in it.
 */
export function guessDelimiter(text: string): Delimiter {
  const named = /^\uFEFF?sep=([,;\t])\r?\n/.exec(text)?.[1];
  const found = candidates.find((sign) => sign === named);
  if (found !== undefined) return found;
  const namedBy = candidates.find((sign) => namesIn(text, sign) >= fewestNamed);
  if (namedBy !== undefined) return namedBy;
  const scored = candidates.map((sign) => ({ sign, share: evenness(text, sign) }));
  const best = Math.max(...scored.map(({ share }) => share));
  const fits = scored.find(({ share }) => share > 0 && share >= best - 0.1);
  return fits?.sign ?? (text.includes(",") && !text.includes('"') ? ";" : ",");
}

/** Number of names of columns in the first row. */
function namesIn(text: string, delimiter: Delimiter): number {
  const [first] = readCsv(text, delimiter, 1);
  const kinds = guessColumns(first?.cells, [], { cars: [], tracks: [] });
  return kinds.filter((kind) => kind !== "none").length;
}

/** Share of the rows that have the commonest number of cells; 0 where that is one. */
function evenness(text: string, delimiter: Delimiter): number {
  const counts = new Map<number, number>();
  const rows = readCsv(text, delimiter, sample).filter(({ cells }) => cells.some((cell) => cell !== ""));
  for (const { cells } of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  const [cells = 1, count = 0] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
  return cells < 2 ? 0 : count / rows.length;
}
