import type { Corner } from "#domain";
import { type CornerCell, cellsOf, cornerCells, type TypedCorner } from "./cornerCells.ts";
import { type AroundCorner, type CornerReading, readCorner } from "./readCorner.ts";

/** What is typed of several corners, by the number each row stands for. */
export type TypedRows = Readonly<Record<string, TypedCorner>>;

/** A row of the table: a corner that is there, one that is being typed, or the empty one at the end. */
export interface CornerRow {
  /** The number it stands for: that of its corner, or the one proposed for a new one. */
  readonly key: string;
  /** Absent for a row that is not stored. */
  readonly corner: Corner | undefined;
  readonly texts: Readonly<Record<CornerCell, string>>;
  readonly reading: CornerReading;
  /** Something in it is typed and not stored. */
  readonly isTyped: boolean;
  /** How it hangs together with the rows beside it: one follows the other at once. */
  readonly chain: "first" | "middle" | "last" | undefined;
}

const mostNumber = 999;

/** The rows of a table of corners in lap order, an empty one for the next corner at its end. */
export function cornerRows(corners: readonly Corner[], typed: TypedRows, around: AroundCorner): CornerRow[] {
  const there = new Map(corners.map((corner) => [String(corner.number), corner]));
  const keys = new Set([...there.keys(), ...Object.keys(typed)]);
  const next = nextNumber(keys, typed);
  if (next <= mostNumber) keys.add(String(next));
  const rows = [...keys]
    .sort((a, b) => Number(a) - Number(b))
    .map((key) => {
      const corner = there.get(key);
      const own = typed[key] ?? {};
      const stored = corner ?? { number: Number(key) };
      const texts = { ...cellsOf(stored, around.speeds.get(stored.number)), ...own };
      return { key, corner, texts, reading: readRow(own, stored, around, corner ? undefined : there) };
    });
  const goesOn = rows.map(({ corner, reading }) => isJoined(corner, reading));
  return rows.map((row, at) => ({
    ...row,
    isTyped: typed[row.key] !== undefined,
    chain: chainOf(goesOn[at - 1] === true, goesOn[at] === true && at + 1 < rows.length),
  }));
}

function nextNumber(keys: ReadonlySet<string>, typed: TypedRows): number {
  const numbers = [...keys, ...Object.values(typed).map(({ number = "" }) => number)].map(Number);
  return Math.max(0, ...numbers.filter((number) => Number.isInteger(number) && number <= mostNumber)) + 1;
}

/** @param taken the corners a new one may not be taken for */
function readRow(
  typed: TypedCorner,
  stored: Corner,
  around: AroundCorner,
  taken: ReadonlyMap<string, Corner> | undefined,
): CornerReading {
  const reading = readCorner(typed, stored, around);
  const { number } = reading.edit;
  if (taken?.has(String(number)) !== true) return reading;
  const problem = { wrong: `Corner ${number} is there already.`, right: "Write another number." };
  return { ...reading, problems: { ...reading.problems, number: problem } };
}

function isJoined(corner: Corner | undefined, { edit: { patch } }: CornerReading): boolean {
  return ("after" in patch ? patch.after : corner?.after) === "none";
}

function chainOf(isAfter: boolean, goesOn: boolean): CornerRow["chain"] {
  if (isAfter) return goesOn ? "middle" : "last";
  return goesOn ? "first" : undefined;
}

/**
 * What is typed, with one cell changed. A cell that says what is stored is not typed, nor is an empty one of a corner that
 * is not there.
 */
export function withCell(
  rows: TypedRows,
  row: Pick<CornerRow, "key" | "corner">,
  cell: CornerCell,
  text: string,
  speed: number | undefined,
): TypedRows {
  const stored = cellsOf(row.corner ?? { number: Number(row.key) }, speed);
  const { [row.key]: typed = {}, ...others } = rows;
  const { [cell]: _, ...rest } = typed;
  const next: TypedCorner = text === stored[cell] ? rest : { ...rest, [cell]: text };
  return isNothing(next) ? others : { ...others, [row.key]: next };
}

const isNothing = (typed: TypedCorner) => cornerCells.every((cell) => typed[cell] === undefined);

/** What is left of what is typed once a row is stored: only what was typed meanwhile. */
export function withoutStored(rows: TypedRows, key: string, stored: TypedCorner): TypedRows {
  const { [key]: typed = {}, ...others } = rows;
  const left = Object.entries(typed).filter(([cell, text]) => stored[cell as CornerCell] !== text);
  return left.length === 0 ? others : { ...others, [key]: Object.fromEntries(left) };
}
