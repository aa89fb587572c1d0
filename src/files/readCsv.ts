import Papa from "papaparse";
import { unguarded } from "./formulaGuard.ts";

/** One row of a table, and the line of the file it begins on, counted from 1. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** Why the row cannot be trusted: its quotes do not fit. */
  readonly fault?: string;
}

const faults: Readonly<Record<string, string>> = {
  MissingQuotes: "A quote opens a cell here and is never closed.",
  InvalidQuotes: "A quoted cell goes on behind its closing quote.",
};

/**
 * Reads CSV text (RFC 4180, and lines that end in LF or CR alone or mixed). A byte order mark is passed over, signs
 * that guard against formulas are taken away, and nothing else is changed: spaces count, cells stay text.
 * @param mostRows stop after so many rows
 */
export function readCsv(text: string, delimiter: string, mostRows = 0): readonly CsvRow[] {
  const bare = withLineFeeds(text.replace(/^\uFEFF/, ""), delimiter);
  const { data, errors } = Papa.parse<string[]>(bare, { delimiter, newline: "\n", preview: mostRows });
  // Behind the last line end comes no further row.
  if (bare.endsWith("\n") && data.at(-1)?.join("") === "" && data.at(-1)?.length === 1) data.pop();
  const faultOf = new Map(errors.map(({ row, code }) => [row, faults[code]]));
  let line = 1;
  return data.map((cells, index) => {
    const fault = faultOf.get(index);
    const row = { line, cells: cells.map(unguarded), ...(fault === undefined ? {} : { fault }) };
    line += 1 + cells.reduce((sum, cell) => sum + (cell.match(/\r\n|\r|\n/g)?.length ?? 0), 0);
    return row;
  });
}

/** The text with every line end outside quotes as LF; those inside belong to their cell. */
function withLineFeeds(text: string, delimiter: string): string {
  if (!text.includes("\r")) return text;
  const sign = delimiter.replace(/[\\\]^-]/g, "\\$&");
  const quotedOrEnd = new RegExp(`(?<=^|[${sign}\\r\\n])"[^"]*(?:""[^"]*)*(?:"|$)|\\r\\n?`, "g");
  return text.replace(quotedOrEnd, (found) => (found.startsWith('"') ? found : "\n"));
}
