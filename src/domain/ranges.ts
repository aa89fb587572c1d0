import { isCalendarDate } from "./calendar.ts";
import type { CalendarDate } from "./rows.ts";

/** From `least` to `most`, both counted. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/** A lap time, ms: a tenth of a second to a day and a night. What lies beyond is a slip. Common practice, no source. */
export const lapRange: Range = { least: 100, most: 86_400_000 };

/** The days a row may name: nobody drove a simulator at home before, and no target reaches further. */
export const firstDate: CalendarDate = "1970-01-01";
export const lastDate: CalendarDate = "2199-12-31";

/** Whether the text is a day that exists and that a row may name. */
export function isStorableDate(text: string): text is CalendarDate {
  return isCalendarDate(text) && text >= firstDate && text <= lastDate;
}

const day = 86_400_000;
/** Instants in those years, whatever the zone: noon of a date lies within a day of it. */
export const instantRange: Range = {
  least: Date.parse(firstDate) - day,
  most: Date.parse(lastDate) + 2 * day,
};

/** Whether a number is an instant a row may name. */
export function isStorableInstant(value: number): boolean {
  return Number.isInteger(value) && value >= instantRange.least && value <= instantRange.most;
}

const [firstSayable, lastSayable] = [Date.parse("0001-01-03"), Date.parse("9999-12-29")];

/** Whether a value is an instant whose day can be told in every zone: the calendar here knows the years 1 to 9999. */
export function isSayable(value: unknown): value is number {
  return Number.isFinite(value) && (value as number) >= firstSayable && (value as number) <= lastSayable;
}

/** Most signs typed of where a reference lap comes from. */
export const longestSource = 500;

/** Most signs of a name, and of a note or any other longer text. */
export const longestName = 400;
export const longestText = 20_000;
