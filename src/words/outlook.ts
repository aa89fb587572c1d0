import { type CalendarDate, formatLapTime } from "#domain";
import type { LevelOutlook, LevelsOff } from "#stats";
import { sayChance } from "./chance.ts";
import { sayFarDate } from "./farDate.ts";

/** Days by which 2, 10 and 18 chances in 20 of reaching a target have come; absent where not within a year. */
export interface ExpectedDates {
  readonly low: CalendarDate | undefined;
  readonly mid: CalendarDate | undefined;
  readonly high: CalendarDate | undefined;
}

/**
 * When a target is likely to be reached, from the day before which it is very unlikely to the one by which it is very
 * likely; of those that fall on one day the surest is told.
 * @param isBegun what is very unlikely has been told before it
 * @example "very unlikely before Sun 6 Dec 2026, as likely as not by mid-January, not yet very likely within a year"
 */
export function sayExpected({ low, mid, high }: ExpectedDates, today: CalendarDate, isBegun = false): string {
  if (low === undefined) return "very unlikely within a year";
  const say = (day: CalendarDate) => sayFarDate(day, today);
  const parts = [
    !isBegun && low !== mid && low !== high && `very unlikely before ${say(low)}`,
    mid === undefined
      ? "less likely than not within a year"
      : mid !== high && `as likely as not by ${say(mid)}`,
    high !== undefined && `very likely by ${say(high)}`,
    mid !== undefined && high === undefined && "not yet very likely within a year",
  ];
  return parts.filter((part) => part !== false).join(", ");
}

/** What the two forecast bands mean, for the chart. */
export const bandMeaning =
  "Of 20 sessions to come, 10 should fall in the inner band, 18 within the outer one and 2 outside.";

/** What the level says of where practice leads. */
export type CurveFigures = Pick<LevelOutlook, "chanceLevel" | "isLevel" | "levelsOff" | "isMostlyAssumption">;

/**
 * Where practice leads: whether the usual lap still moves, and where it will level off as far as that can be told.
 * @example "No longer moving: 7 chances in 20. Where it levels off cannot be told yet."
 */
export function sayCurve({ chanceLevel, isLevel, levelsOff, isMostlyAssumption }: CurveFigures): string {
  if (isMostlyAssumption) return "Where it leads cannot be told yet: it needs 4 sessions.";
  return [`No longer moving: ${sayChance(chanceLevel)}.`, ...(isLevel ? [] : [sayLevelsOff(levelsOff)])].join(
    " ",
  );
}

function sayLevelsOff(levelsOff: LevelsOff): string {
  switch (levelsOff.kind) {
    case "at": {
      const { low, mid, high } = levelsOff.ms;
      const say = (ms: number) => formatLapTime(ms, 1);
      return `It levels off at about ${say(mid)}, between ${say(low)} and ${say(high)}.`;
    }
    case "rising":
      return "Times rise, and no levelling off is in sight.";
    case "already":
    case "untold":
      return "Where it levels off cannot be told yet.";
  }
}
