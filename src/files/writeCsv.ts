import { guarded } from "./formulaGuard.ts";

/** Figures whose digits are fixed already, with a point: "1:23.450" keeps its nought, a number would not. */
export interface FixedFigures {
  readonly figures: string;
}

/** A cell: text is guarded against formulas, numbers and figures stay what they are, negative ones too. */
export type CsvCell = string | number | FixedFigures;

export const delimiters = [",", ";", "\t"] as const;
export type Delimiter = (typeof delimiters)[number];
export type DecimalSign = "." | ",";

export interface CsvStyle {
  /** Comma unless said. */
  readonly delimiter?: Delimiter;
  /** Point unless said. */
  readonly decimal?: DecimalSign;
  /** A byte order mark, by which spreadsheets know UTF-8; written unless said. */
  readonly hasMark?: boolean;
}

/**
 * Cells as CSV text (RFC 4180: CRLF, quotes doubled). Text with any sign that some program takes for a separator is
 * quoted, whatever the separator is.
 */
export function writeCsv(rows: readonly (readonly CsvCell[])[], style: CsvStyle = {}): string {
  const { delimiter = ",", decimal = ".", hasMark = true } = style;
  const line = (row: readonly CsvCell[]) =>
    `${row.map((cell) => written(cell, delimiter, decimal)).join(delimiter)}\r\n`;
  return `${hasMark ? "\uFEFF" : ""}${rows.map(line).join("")}`;
}

function written(cell: CsvCell, delimiter: Delimiter, decimal: DecimalSign): string {
  if (typeof cell === "string") return quoted(guarded(cell), /[",;|\t\r\n]/);
  const figures = typeof cell === "number" ? String(cell) : cell.figures;
  return quoted(figures.replace(".", decimal), delimiter);
}

function quoted(text: string, where: RegExp | string): string {
  return text.search(where) >= 0 ? `"${text.replaceAll('"', '""')}"` : text;
}
