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

/** Most signs of a name, and of a note or any other longer text. */
export const longestName = 400;
export const longestText = 20_000;
