import type { CornerEdit } from "#db";
import type { Corner, FieldProblem } from "#domain";
import { readCsv } from "#files";
import { type CornerCell, cornerCells, type TypedCorner } from "./cornerCells.ts";
import { type AroundCorner, readCorner } from "./readCorner.ts";

/** One pasted line, as it was read. */
export interface PastedLine {
  /** Line of the pasted text, from 1. */
  readonly line: number;
  readonly text: string;
  /** Absent where something is wrong with it: then all of it stays out. */
  readonly edit: CornerEdit | undefined;
  readonly said: TypedCorner;
  /** What could not be read of it. */
  readonly problems: readonly FieldProblem[];
}

export interface Pasted {
  readonly lines: readonly PastedLine[];
  /** Columns whose head says nothing that is known of a corner. */
  readonly unknown: readonly string[];
}

/** What a column may be headed with, besides its own name. */
const heads: { readonly [C in CornerCell]: readonly string[] } = {
  number: ["corner", "number", "no", "nr", "#", "turn", "corner number", "turn number"],
  name: ["name", "corner name", "called"],
  direction: ["turns", "direction", "left right", "left or right", "l r", "side"],
  bend: ["kind of bend", "kind", "bend", "type", "corner type"],
  after: ["what follows", "follows", "after", "straight", "straight after", "next straight", "then"],
  sector: ["sector"],
  speed: ["lowest speed", "lowest", "speed", "minimum speed", "min speed", "apex speed"],
  radius: ["radius", "inner radius"],
  width: ["width", "road width", "width of the road"],
  angle: ["angle", "degrees"],
  kerbEntry: ["kerb at entry", "kerb entry", "entry kerb"],
  kerbApex: ["kerb at apex", "kerb apex", "apex kerb"],
  kerbExit: ["kerb at exit", "kerb exit", "exit kerb"],
};

/** A unit at the end of a head: "lowest speed (mph)", "radius m". */
const unitOfHead = /[\s([]+(km\/h|kmh|kph|mph|m\/s|kn|m|metres|°|deg)[)\]]*$/i;
const noUnits = new Set(["°", "deg", "metres"]);

interface Head {
  readonly cell: CornerCell | undefined;
  /** Goes with every figure of the column that names none. */
  readonly unit: string;
}

/**
 * Reads corners pasted from a spreadsheet: cells apart by tabs, semicolons or commas, with a row of heads or in the order of the
 * table. Without numbers the lines are numbered as they stand. A line with something wrong in it is said and stays out whole, for cells
 * one column off would be stored as what they are not.
 */
export function readPasted(text: string, corners: readonly Corner[], around: AroundCorner): Pasted {
  const rows = readCsv(text, delimiterOf(text)).filter(({ cells }) =>
    cells.some((cell) => cell.trim() !== ""),
  );
  const [first] = rows;
  if (first === undefined) return { lines: [], unknown: [] };
  const named = first.cells.map(headOf);
  const isHead = named.filter(({ cell }) => cell !== undefined).length >= Math.min(2, first.cells.length);
  const body = isHead ? rows.slice(1) : rows;
  const hasNumbers = body.some(({ cells: [cell = ""] }) => /^\s*\d{1,3}\s*$/.test(cell));
  const columns = isHead
    ? named
    : cornerCells.slice(hasNumbers ? 0 : 1).map((cell): Head => ({ cell, unit: "" }));
  const isNumbered = columns.some(({ cell }) => cell === "number");
  const taken = new Set<number>();
  return {
    unknown: isHead
      ? first.cells.filter((head, at) => named[at]?.cell === undefined && head.trim() !== "")
      : [],
    lines: body.map(({ line, cells, fault }, at): PastedLine => {
      const typed = typedOf(cells, columns);
      const number = isNumbered ? Number(typed.number ?? Number.NaN) : at + 1;
      const stored = corners.find((corner) => corner.number === number) ?? { number };
      const reading = readCorner(typed, stored, around);
      const found = cornerCells.flatMap((cell) => reading.problems[cell] ?? []);
      const problems = fault === undefined ? found : [fault];
      const shown = { line, text: cells.join(" · "), said: reading.said };
      if (isNumbered && typed.number === undefined)
        problems.push({ wrong: "The number of the corner is missing.", right: "Write it in the table." });
      else if (reading.problems.number === undefined && taken.has(reading.edit.number))
        problems.push({ wrong: `Corner ${number} stands above already.`, right: "That line is taken." });
      else if (reading.problems.number === undefined && fault === undefined) {
        taken.add(reading.edit.number);
        return { ...shown, edit: problems.length === 0 ? reading.edit : undefined, problems };
      }
      return { ...shown, edit: undefined, problems };
    }),
  };
}

/** Cells are apart by what no figure has in it: tabs before semicolons, commas only where there is neither. */
const delimiterOf = (text: string) => (text.includes("\t") ? "\t" : text.includes(";") ? ";" : ",");

function headOf(text: string): Head {
  const plain = text.trim().toLowerCase();
  const unit = unitOfHead.exec(plain)?.[1] ?? "";
  const name = (unit === "" ? plain : plain.replace(unitOfHead, "")).replace(/[/_.:]+/g, " ").trim();
  const cell = cornerCells.find((one) => heads[one].includes(name));
  return { cell, unit: noUnits.has(unit) ? "" : unit };
}

function typedOf(cells: readonly string[], columns: readonly Head[]): TypedCorner {
  const typed: { [C in CornerCell]?: string } = {};
  for (const [at, { cell, unit }] of columns.entries()) {
    const text = (cells[at] ?? "").trim();
    if (cell === undefined || text === "") continue;
    typed[cell] = unit !== "" && /^[\d.,]+$/.test(text) ? `${text} ${unit}` : text;
  }
  return typed;
}
