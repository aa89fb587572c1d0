import { type CalendarDate, formatLapTime, sayDate } from "#domain";
import type { LevelOutlook, LevelsOff } from "#stats";
import { counted } from "./counted.ts";

/** When 2, 10 and 18 of 20 futures have reached a target; absent where they have not. */
export interface ExpectedDates {
  readonly low: CalendarDate | undefined;
  readonly mid: CalendarDate | undefined;
  readonly high: CalendarDate | undefined;
}

/**
 * When a target is likely to be reached; of numbers that fall on one day the largest is told.
 * @param within how far was looked ahead, in words: "a year"
 * @example "2 of 20 futures reach it by Sun 1 Nov 2026, 10 by Thu 3 Dec 2026, fewer than 18 within a year"
 */
export function sayExpected({ low, mid, high }: ExpectedDates, within: string): string {
  const steps = [
    { futures: 2, day: low },
    { futures: 10, day: mid },
    { futures: 18, day: high },
  ];
  const reached = steps.filter(({ day }, i) => day !== undefined && day !== steps[i + 1]?.day);
  const missing = steps.find(({ day }) => day === undefined);
  if (reached.length === 0) return `Fewer than 2 of 20 futures reach it within ${within}`;
  const [first = "", ...more] = reached.map(({ futures, day = "" }, i) =>
    i === 0 ? `${futures} of 20 futures reach it by ${sayDate(day)}` : `${futures} by ${sayDate(day)}`,
  );
  const rest = missing === undefined ? [] : [`fewer than ${missing.futures} within ${within}`];
  return [first, ...more, ...rest].join(", ");
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
  return [
    `No longer moving: ${counted(Math.round(chanceLevel * 20), "chance")} in 20.`,
    ...(isLevel ? [] : [sayLevelsOff(levelsOff)]),
  ].join(" ");
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
