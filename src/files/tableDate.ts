import { type CalendarDate, firstDate, isCalendarDate, lastDate, type Reading, readDate } from "#domain";
import { type Clock, readClock } from "./tableClock.ts";

/** Which part of a date in figures comes first; a year of four figures in front is always read as such. */
export type DateOrder = "day" | "month" | "year";

/** A date as it stands in a table, with the time of day where one stands behind it. */
export interface TableDate {
  readonly date: CalendarDate;
  readonly clock?: Clock;
  /** Where the time names its distance from UTC, "19:05Z": that instant. */
  readonly instant?: number;
}

const withClock =
  /^(.*?\d)(?:\s*,?\s+|T)(\d{1,2}[:h]\d{2}(?::\d{2}(?:[.,]\d{1,9})?)?(?:\s*[ap]\.?m\.?)?)\s*(Z|[+-]\d{2}:?\d{2})?$/i;
const inFigures = /^(\d{1,4})\s*([-./ ])\s*(\d{1,2})\s*\2\s*(\d{1,4})\.?$/;
const compact = /^(\d{4})(\d{2})(\d{2})$/;
const monthInFront = /^(?:[a-z]+,?\s+)?([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})$/i;

/** The three figures of a date, or undefined: 3/4/26 gives ["3", "4", "26"]. */
function figuresOf(text: string): readonly [string, string, string] | undefined {
  const found = inFigures.exec(text) ?? compact.exec(text);
  if (found === null) return undefined;
  const [, a = "", b = "", c = "", d] = found;
  return d === undefined ? [a, b, c] : [a, c, d];
}

/** A longer cell is no date; patterns over a text of a million blanks would not come to an end. */
const longest = 60;

function dayPart(cell: string): string {
  if (cell.length > longest) return "";
  return (withClock.exec(cell.trim())?.[1] ?? cell).trim();
}

/** Whether the text has the shape of a date, in whatever order. */
export function looksLikeDate(cell: string): boolean {
  const day = dayPart(cell);
  const figures = figuresOf(day);
  // Three figures with points may be a lap time, 1.23.456: that has no part of four or two with a day in it.
  if (figures !== undefined) return figures[0].length === 4 || figures[2].length === 4 || /[-/]/.test(day);
  return inWords(day)?.ok === true;
}

function inWords(day: string): Reading<{ date: CalendarDate }> | undefined {
  const [, month, number, year] = monthInFront.exec(day) ?? [];
  if (month !== undefined) return readDate(`${number} ${month} ${year}`);
  return /[a-z]/i.test(day) ? readDate(day) : undefined;
}

/**
 * The order in which the dates of a column stand: the one in which most of them are days that exist. Undefined where
 * several fit alike, as with 3/4/2026; only dates with points then have the day in front, and a year of two figures
 * stands in front only between hyphens.
 */
export function guessDateOrder(cells: readonly string[]): DateOrder | undefined {
  const days = cells.map(dayPart).filter((day) => (figuresOf(day)?.[0].length ?? 4) < 4);
  if (days.length === 0) return "year";
  const counts = (["day", "month", "year"] as const).map((order) => ({
    order,
    count: days.filter((day) => readDay(day, order).ok).length,
  }));
  const best = Math.max(...counts.map(({ count }) => count));
  const fits = counts.filter(({ count }) => count === best).map(({ order }) => order);
  const all = (sign: string) => days.every((day) => day.includes(sign));
  const likely = fits.length === 1 || all("-") ? fits : fits.filter((order) => order !== "year");
  if (best === 0) return undefined;
  return likely.length === 1 || (likely[0] === "day" && all(".")) ? likely[0] : undefined;
}

/** Reads a date of a table. Never guesses: without an order, one in figures is refused unless its year stands first. */
export function readTableDate(cell: string, order: DateOrder | undefined): Reading<TableDate> {
  const text = cell.trim();
  if (text.length > longest) return refused(text, "is not a date", "Write it as 2026-10-14.");
  const [, , time, offset] = withClock.exec(text) ?? [];
  const day = readDay(dayPart(text), order);
  if (!day.ok || time === undefined) return day;
  const clock = readClock(time);
  if (!clock.ok) return clock;
  const { hour, minute, second } = clock.clock;
  if (offset === undefined) return { ok: true, date: day.date, clock: clock.clock };
  const two = (value: number) => String(value).padStart(2, "0");
  const zone = /^z$/i.test(offset) ? "Z" : offset.replace(/^(...):?(..)$/, "$1:$2");
  const instant = Date.parse(`${day.date}T${two(hour)}:${two(minute)}:${two(second)}${zone}`);
  if (!Number.isFinite(instant)) return refused(text, "has an impossible distance from UTC", "Leave it out.");
  return { ok: true, date: day.date, clock: clock.clock, instant };
}

function readDay(text: string, order: DateOrder | undefined): Reading<{ date: CalendarDate }> {
  if (text === "") return refused("", "The date is missing", "Write it as 2026-10-14.");
  const figures = figuresOf(text);
  if (figures === undefined)
    return (
      inWords(text) ?? refused(text, "is not a date", "Write it as 2026-10-14, 14.10.2026 or 14 Oct 2026.")
    );
  const isYearFirst = figures[0].length >= 3;
  if (order === undefined && !isYearFirst)
    return refused(text, "may have the day or the month in front", "Say above which comes first.");
  const [a, b, c] = figures;
  const places = { year: [a, b, c], day: [c, b, a], month: [c, a, b] } as const;
  const [year, month, day] = places[isYearFirst ? "year" : (order ?? "year")];
  const date = `${fullYear(year)}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`;
  if (!isCalendarDate(date))
    return refused(
      text,
      `is no day, read with the ${isYearFirst ? "year" : order} in front`,
      "Check the order of dates, or the date.",
    );
  if (date < firstDate || date > lastDate)
    return refused(
      text,
      `lies outside the years ${firstDate.slice(0, 4)} to ${lastDate.slice(0, 4)}`,
      "Check the date.",
    );
  return { ok: true, date };
}

/** 26 is 2026, 99 is 1999: two figures from 70 on belong to the century before. */
function fullYear(year: string): string {
  if (year.length > 2) return year.padStart(4, "0");
  return String(Number(year) + (Number(year) >= 70 ? 1900 : 2000));
}

function refused(text: string, wrong: string, right: string): Reading<never> {
  const shown = text.length <= 40 ? text : `${text.slice(0, 40)}…`;
  const said = text === "" ? wrong : `“${shown}” ${wrong}`;
  return { ok: false, problem: { at: 0, length: text.length, wrong: `${said}.`, right } };
}
