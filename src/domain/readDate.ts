import { isCalendarDate } from "./calendar.ts";
import type { Reading } from "./problem.ts";
import { firstDate, lastDate } from "./ranges.ts";
import type { CalendarDate } from "./rows.ts";
import { monthNames, sayDate } from "./sayDate.ts";

const inFigures = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const inWords = /^(?:([a-z]+),?\s+)?(\d{1,2})\s+([a-z]{3,9})\.?,?\s+(\d{4})$/i;

/**
 * Reads a date a driver typed: "2026-10-14", "14 Oct 2026", "Wed 14 October 2026". Dates with slashes or points are
 * refused, because nobody can tell 3/4 from 4/3. A date that does not exist is refused, and so is a year that none can be.
 */
export function readDate(text: string): Reading<{ date: CalendarDate }> {
  const typed = text.trim();
  const at = text.length - text.trimStart().length;
  const refuse = (wrong: string, right: string) =>
    ({ ok: false, problem: { at, length: typed.length, wrong, right } }) as const;
  if (typed === "") return refuse("No date is typed.", "Write it as 2026-10-14 or 14 Oct 2026.");
  const parts = partsOf(typed);
  if (parts === undefined)
    return refuse(
      `“${shortened(typed)}” is not a date this field reads.`,
      "Write it as 2026-10-14 or 14 Oct 2026.",
    );
  const date = `${parts.year}-${parts.month.padStart(2, "0")}-${parts.day.padStart(2, "0")}`;
  if (!isCalendarDate(date))
    return refuse(
      `There is no such day as ${typed}.`,
      "Months go from 1 to 12, days from 1 to 28, 29, 30 or 31.",
    );
  if (!sayDate(date).toLowerCase().startsWith(parts.weekday.slice(0, 3).toLowerCase()))
    return refuse(`${typed} does not fit together.`, `That date is ${sayDate(date)}.`);
  if (date < firstDate || date > lastDate)
    return refuse(
      `The year ${date.slice(0, 4)} cannot be right.`,
      `Write a year from ${firstDate.slice(0, 4)} to ${lastDate.slice(0, 4)}.`,
    );
  return { ok: true, date };
}

function shortened(typed: string): string {
  return typed.length <= 40 ? typed : `${typed.slice(0, 40)}…`;
}

function partsOf(typed: string) {
  const figures = inFigures.exec(typed);
  if (figures !== null)
    return { year: figures[1] ?? "", month: figures[2] ?? "", day: figures[3] ?? "", weekday: "" };
  const words = inWords.exec(typed);
  const name = words?.[3]?.toLowerCase();
  if (words === null || name === undefined) return undefined;
  const month = monthNames.findIndex((full) =>
    [full.toLowerCase(), full.slice(0, 3).toLowerCase()].includes(name),
  );
  return month < 0
    ? undefined
    : { year: words[4] ?? "", month: String(month + 1), day: words[2] ?? "", weekday: words[1] ?? "" };
}
