import { longestText, type Problem, type Range, type Reading } from "#domain";
import type { ColumnKind } from "./columns.ts";

/** What a cell of yes or no may say. */
const yes = new Set(["yes", "y", "true", "1", "x", "ja", "oui", "si", "sí"]);
const no = new Set(["no", "n", "false", "0", "nein", "non"]);

/**
 * The cells of one row by what they hold. Each `take` gives what was read, or nothing where the cell is empty; the first
 * cell that cannot be read is kept as the row's problem.
 */
export class TableCells {
  problem: Problem | undefined;
  readonly #cells: readonly string[];
  readonly #columns: readonly ColumnKind[];

  constructor(cells: readonly string[], columns: readonly ColumnKind[]) {
    this.#cells = cells;
    this.#columns = columns;
  }

  has(kind: ColumnKind): boolean {
    return this.#columns.includes(kind);
  }

  /** The cell as it stands, spaces and all; empty where there is no such column. */
  raw(kind: ColumnKind): string {
    const index = this.#columns.indexOf(kind);
    return index < 0 ? "" : (this.#cells[index] ?? "");
  }

  refuse(wrong: string, right: string): undefined {
    this.problem ??= { at: 0, length: 0, wrong, right };
    return undefined;
  }

  /** What a reader makes of the cell. */
  take<T>(kind: ColumnKind, read: (cell: string) => Reading<T>): T | undefined {
    const cell = this.raw(kind).trim();
    if (cell === "") return undefined;
    const reading = read(cell);
    if (reading.ok) return reading;
    this.problem ??= reading.problem;
    return undefined;
  }

  text(kind: ColumnKind, word: string, longest = longestText): string | undefined {
    const cell = this.raw(kind);
    if (cell.trim() === "") return undefined;
    if (cell.length <= longest) return cell;
    return this.refuse(`The ${word} has ${cell.length} characters.`, `It may have up to ${longest}.`);
  }

  whole(kind: ColumnKind, word: string): number | undefined {
    const cell = this.raw(kind).trim();
    if (cell === "") return undefined;
    if (/^\d{1,6}([.,]0+)?$/.test(cell)) return Number.parseInt(cell, 10);
    return this.refuse(
      `The ${word} ${shown(cell)} is not a whole number.`,
      "Write it as 1, 2, 3, or leave the column out.",
    );
  }

  /** A figure, such as litres. */
  measure(kind: ColumnKind, word: string, decimal: string, { least, most }: Range): number | undefined {
    const cell = this.raw(kind).trim();
    if (cell === "") return undefined;
    const number = Number(cell.replace(decimal, "."));
    if (/^\d{1,6}([.,]\d{1,12})?$/.test(cell) && number >= least && number <= most) return number;
    return this.refuse(
      `${shown(cell)} is no figure for the ${word}.`,
      `Write it as 12${decimal}5, from ${least} to ${most}.`,
    );
  }

  isYes(kind: ColumnKind, word: string): boolean {
    const said = yesOrNo(this.raw(kind));
    if (said !== undefined) return said === "yes";
    const cell = this.raw(kind).trim();
    if (cell === "") return false;
    this.refuse(
      `${shown(cell)} is neither yes nor no in “${word}”.`,
      "Write yes or no, or leave the column out.",
    );
    return false;
  }

  /** One of the words of a list. */
  oneOf<T extends string>(kind: ColumnKind, word: string, options: readonly T[]): T | undefined {
    const cell = this.raw(kind).trim().toLowerCase();
    if (cell === "") return undefined;
    const found = options.find((option) => option === cell);
    return (
      found ??
      this.refuse(`${shown(cell)} is no ${word}.`, `Write ${options.join(", ")}, or leave the column out.`)
    );
  }
}

/** What a cell of yes or no says; undefined where it says neither. */
export function yesOrNo(cell: string): "yes" | "no" | undefined {
  const word = cell.trim().toLowerCase();
  if (yes.has(word)) return "yes";
  return no.has(word) ? "no" : undefined;
}

/** A cell as it may stand in a sentence. */
export function shown(cell: string): string {
  const signs = [...cell];
  return `“${signs.length <= 40 ? cell : `${signs.slice(0, 40).join("")}…`}”`;
}
