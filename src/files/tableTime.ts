import { lapRange, type Problem, type Reading } from "#domain";
import { readTime } from "#entry";
import { shown } from "./tableCells.ts";
import type { DecimalSign } from "./writeCsv.ts";

/** How the times of a table are written. */
export interface TimeForm {
  readonly decimal: DecimalSign;
  /** What a whole number such as 83456 means. */
  readonly wholeNumbers: "seconds" | "milliseconds";
}

export interface TableTime {
  readonly ms: number;
  readonly decimals: number;
}

/**
 * Reads a lap or sector time of a table: the full forms of the entry line (1:23.456, 83.456, 1:02:03.4), up to three
 * whole digits as seconds, and whole numbers as milliseconds where that is said. Plain seconds need the decimal sign of
 * the table: a comma is never a thousands separator, 1,234 is never 1234. Noughts behind the third decimal are passed
 * over; any other digit there is refused, never cut.
 */
export function readTableTime(cell: string, { decimal, wholeNumbers }: TimeForm): Reading<TableTime> {
  const text = cell.trim();
  if (/^\d+$/.test(text)) return readWhole(text, wholeNumbers);
  const [, sign] = /^\d+([.,])\d+$/.exec(text) ?? [];
  if (sign !== undefined && sign !== decimal)
    return refused(
      text,
      `has a ${sign === "," ? "comma" : "point"}, and the decimal sign of this table is the ${decimal === "," ? "comma" : "point"}`,
      "Change the decimal sign above if that is wrong.",
    );
  const read = readTime(text.replace(/([.,]\d{3})0+$/, "$1"));
  if (!read.ok) return refusedAs(text, read.problem);
  if (read.form !== "full")
    return refused(text, "is not a whole lap time", "Write it as 1:23.456 or 83.456.");
  return within(text, read);
}

function readWhole(text: string, wholeNumbers: TimeForm["wholeNumbers"]): Reading<TableTime> {
  const number = Number(text);
  if (wholeNumbers === "milliseconds") return within(text, { ms: number, decimals: 3 });
  if (text.length <= 3) return within(text, { ms: number * 1000, decimals: 0 });
  return refused(text, "has no decimal sign", "Say above if whole numbers are milliseconds.");
}

function within(text: string, { ms, decimals }: TableTime): Reading<TableTime> {
  if (ms >= lapRange.least && ms <= lapRange.most) return { ok: true, ms, decimals };
  const wrong =
    ms < 1 ? "is no time at all" : ms < lapRange.least ? "is under a tenth of a second" : "is over 24 hours";
  return refused(text, wrong, "Write a time such as 1:23.456.");
}

/** Whether the text has the shape of a lap time. A whole number has not: it may be anything. */
export function looksLikeTime(cell: string): boolean {
  const text = cell.trim();
  return /[:.,'’′]/.test(text) && /^\d/.test(text) && readTime(text.replace(/([.,]\d{3})0+$/, "$1")).ok;
}

/**
 * The form in which most of these times are written.
 * @param others cells of other figures, which have the same decimal sign
 */
export function guessTimeForm(cells: readonly string[], others: readonly string[] = []): TimeForm {
  const figures = (all: readonly string[]) =>
    all.map((cell) => cell.trim()).filter((cell) => /^\d/.test(cell));
  const times = figures(cells);
  const count = (all: readonly string[], shape: RegExp) => all.filter((cell) => shape.test(cell)).length;
  const long = count(times, /^\d{4,}$/);
  const both = [...times, ...figures(others)];
  return {
    decimal: count(both, /,\d+$/) > count(both, /\.\d+$/) ? "," : ".",
    wholeNumbers: long > 0 && long >= times.length / 2 ? "milliseconds" : "seconds",
  };
}

function refused(text: string, wrong: string, right: string): Reading<never> {
  return { ok: false, problem: { at: 0, length: text.length, wrong: `${shown(text)} ${wrong}.`, right } };
}

/** A problem with part of a cell, with the cell named: the row has others. One with all of it names it already. */
function refusedAs(text: string, problem: Problem): Reading<never> {
  const isPart = problem.length > 0 && problem.length < text.length;
  return { ok: false, problem: { ...problem, wrong: `${isPart ? `${shown(text)}: ` : ""}${problem.wrong}` } };
}
