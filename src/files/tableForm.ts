import { type ColumnKind, sectorOf } from "./columns.ts";
import { guessColumns, type KnownNames } from "./guessColumns.ts";
import { guessDelimiter } from "./guessDelimiter.ts";
import { type CsvRow, readCsv } from "./readCsv.ts";
import { type DateOrder, guessDateOrder, looksLikeDate } from "./tableDate.ts";
import { guessTimeForm, looksLikeTime, type TimeForm } from "./tableTime.ts";
import type { Delimiter } from "./writeCsv.ts";

/** How a table is written. Whatever is found may be said otherwise by the driver. */
export interface TableForm extends TimeForm {
  readonly delimiter: Delimiter;
  readonly hasHeader: boolean;
  /** Undefined where the dates do not tell: then the driver must. */
  readonly dateOrder: DateOrder | undefined;
  readonly columns: readonly ColumnKind[];
}

/** A table with its form: the head, if it has one, and the rows below. */
export interface Table {
  readonly form: TableForm;
  readonly head: readonly string[] | undefined;
  readonly rows: readonly CsvRow[];
  /** Number of its columns. */
  readonly width: number;
  /** The text ends without a line end: its last line may have been cut off. */
  readonly isOpenEnded: boolean;
}

/** Cells of a column that are not empty. */
export function cellsOf(table: Pick<Table, "rows">, index: number): string[] {
  return table.rows.map(({ cells }) => cells[index]?.trim() ?? "").filter(Boolean);
}

/**
 * Reads a text as a table: separator, head, columns, order of dates and form of times are found from the text itself
 * wherever `said` leaves them open. Rows that are empty are passed over, as are lines of one cell above the head.
 */
export function readTable(text: string, said: Partial<TableForm>, known: KnownNames): Table {
  const delimiter = said.delimiter ?? guessDelimiter(text);
  const filled = readCsv(text, delimiter).filter(
    ({ line, cells }) =>
      cells.some((cell) => cell.trim() !== "") &&
      !(line === 1 && /^sep=.?$/.test(cells.join(delimiter).trim())),
  );
  const isWide = filled.some(({ cells }) => cells.filter(Boolean).length > 1);
  const first = isWide ? filled.findIndex(({ cells }) => cells.filter(Boolean).length > 1) : 0;
  const body = filled.slice(Math.max(0, first));
  const hasHeader = said.hasHeader ?? isHead(body[0]?.cells ?? [], body.slice(1));
  const head = hasHeader ? body[0]?.cells.map((cell) => cell.trim()) : undefined;
  // Without a head the lines above are rows like others, to be read or refused.
  const rows = hasHeader ? body.slice(1) : filled;
  const guessed = guessColumns(
    head,
    rows.slice(0, 200).map(({ cells }) => cells),
    known,
  );
  const columns = guessed.map((kind, index) => said.columns?.[index] ?? kind);
  const cellsIn = (fits: (kind: ColumnKind) => boolean) =>
    columns.flatMap((kind, index) => (fits(kind) ? cellsOf({ rows }, index) : []));
  const isTime = (kind: ColumnKind) => kind === "time" || sectorOf(kind) !== undefined;
  const times = guessTimeForm(
    cellsIn(isTime),
    cellsIn((kind) => kind === "fuel" || kind === "counted"),
  );
  const form: TableForm = {
    delimiter,
    hasHeader,
    columns,
    decimal: said.decimal ?? times.decimal,
    wholeNumbers: said.wholeNumbers ?? times.wholeNumbers,
    dateOrder: said.dateOrder ?? guessDateOrder(cellsIn((kind) => kind === "date")),
  };
  return { form, head, rows, width: columns.length, isOpenEnded: !/[\r\n]\s*$/.test(text) };
}

/** A head has no date, no time and no number in it, and some row below has. */
function isHead(cells: readonly string[], below: readonly CsvRow[]): boolean {
  const isFigure = (cell: string) =>
    /^[+-]?\d+([.,]\d+)?$/.test(cell.trim()) || looksLikeTime(cell) || looksLikeDate(cell);
  return (
    cells.length > 0 && !cells.some(isFigure) && below.slice(0, 200).some((row) => row.cells.some(isFigure))
  );
}

/** By which a matching is known again: the head without case and spaces, or the number of columns. */
export function tableSignature({ head, width }: Pick<Table, "head" | "width">): string {
  return head === undefined
    ? `${width} columns without names`
    : head.map((cell) => cell.toLowerCase()).join("\u001F");
}
