import { type CalendarDate, formatLapTime, sayDate } from "#domain";

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

/** What a practice curve says of the future: floor in ms and half-life in laps, each with its 90 % interval. */
export interface CurveFigures {
  readonly floor: { readonly low: number; readonly high: number };
  readonly halfLife: { readonly low: number; readonly high: number } | undefined;
  /** Probability that practice moves nothing. */
  readonly flatChance: number;
  readonly isMostlyAssumption: boolean;
}

/** A whole number that floating point holds a trifle too large is not counted up. */
const slack = 1e-6;

/**
 * Where practice leads: floor, half-life, and how sure that practice moves anything.
 * @example "The usual lap levels off between 1:22.100 and 1:22.900. The gap halves in 60 to 400 laps. …"
 */
export function sayCurve({ floor, halfLife, flatChance, isMostlyAssumption }: CurveFigures): string {
  const flat = Math.round(flatChance * 20);
  return [
    ...(isMostlyAssumption ? ["Mostly assumption: fewer than 4 sessions."] : []),
    `The usual lap levels off between ${formatLapTime(floor.low)} and ${formatLapTime(floor.high)}.`,
    ...(halfLife === undefined
      ? []
      : [`The gap halves in ${Math.floor(halfLife.low)} to ${Math.ceil(halfLife.high - slack)} laps.`]),
    flat === 0
      ? "In fewer than 1 of 20 futures practice moves nothing."
      : `In ${flat} of 20 futures practice moves nothing.`,
  ].join(" ");
}
