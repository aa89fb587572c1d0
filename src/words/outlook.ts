import { type CalendarDate, formatLapTime, sayDate } from "#domain";
import type { LevelOutlook, LevelsOff } from "#stats";
import { CHANCES, sayChance } from "./chance.ts";
import { asSentence } from "./counted.ts";
import { sayFarDate } from "./farDate.ts";

/** The days by which 2, 10 and 18 of 20 chances to reach a target have come; absent where they have not. */
export interface ExpectedDates {
  readonly low: CalendarDate | undefined;
  readonly mid: CalendarDate | undefined;
  readonly high: CalendarDate | undefined;
}

/**
 * When a target is likely to be reached, as one says it: from when on it is possible, when as likely as not, by when
 * very likely; a date farther than six weeks as a month or a season.
 * @param within how far was looked ahead, in words: "a year"
 * @example "Possible from Sun 1 Nov 2026, as likely as not by Thu 3 Dec 2026, very likely by spring"
 * @example "Very unlikely within a year"
 */
export function sayExpected({ low, mid, high }: ExpectedDates, today: CalendarDate, within: string): string {
  if (low === undefined) return `Very unlikely within ${within}`;
  const far = (day: CalendarDate) => sayFarDate(day, today);
  const steps = [
    { words: `possible from ${far(low)}`, day: low },
    { words: mid && `as likely as not by ${far(mid)}`, day: mid },
    { words: high && `very likely by ${far(high)}`, day: high },
  ];
  const told = steps.flatMap(({ words, day }, i) => (words && day !== steps[i + 1]?.day ? [words] : []));
  const rest =
    mid === undefined
      ? [`less likely than not within ${within}`]
      : high === undefined
        ? [`not very likely within ${within}`]
        : [];
  return asSentence([...told, ...rest].join(", "));
}

/**
 * The same exactly: the days by which 2, 10 and 18 of 20 chances have come; of numbers that fall on one day the largest.
 * @param within how far was looked ahead, in words: "a year"
 * @example "2 chances in 20 by Sun 1 Nov 2026, 10 by Thu 3 Dec 2026, fewer than 18 within a year"
 */
export function sayExpectedExactly({ low, mid, high }: ExpectedDates, within: string): string {
  const steps = [
    { chances: 2, day: low },
    { chances: 10, day: mid },
    { chances: 18, day: high },
  ];
  const reached = steps.filter(({ day }, i) => day !== undefined && day !== steps[i + 1]?.day);
  const missing = steps.find(({ day }) => day === undefined);
  if (reached.length === 0) return `Fewer than 2 chances in ${CHANCES} within ${within}`;
  const told = reached.map(({ chances, day = "" }, i) =>
    i === 0 ? `${chances} chances in ${CHANCES} by ${sayDate(day)}` : `${chances} by ${sayDate(day)}`,
  );
  const rest = missing === undefined ? [] : [`fewer than ${missing.chances} within ${within}`];
  return [...told, ...rest].join(", ");
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
