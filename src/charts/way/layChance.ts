import { addDays, type CalendarDate, daysBetween } from "#domain";
import type { ExpectedDates } from "#words";
import { type StackedDot, stackDots } from "./stackDots.ts";

/** A chance on the calendar. */
export interface Chance {
  readonly today: CalendarDate;
  /** Equally likely days, the soonest first; undefined for those not within a year. */
  readonly likelyDays: readonly (CalendarDate | undefined)[];
  /** Days by which 2, 10 and 18 of the twenty have come. */
  readonly expected: ExpectedDates;
  /** The day it is wanted by. */
  readonly by: CalendarDate | undefined;
}

/** Where everything of the line of time stands, px from its left end and up from the line. */
export interface ChanceDrawing {
  readonly dots: readonly (StackedDot & { readonly isInTime: boolean })[];
  /** Dots that lie beyond the line: how many, and where their heap begins; undefined where there are none. */
  readonly beyond: { readonly count: number; readonly from: number; readonly columns: number } | undefined;
  /** Half the width of a dot. */
  readonly radius: number;
  readonly levels: number;
  readonly lineEnd: number;
  readonly at: (date: CalendarDate) => number;
  /** The last day on the line. */
  readonly last: CalendarDate;
}

const RADIUS = 5;
const LEAST_RADIUS = 2.5;
/** The highest heap, px: dots get smaller before it grows higher. */
const MOST_HIGH = 112;
/** So many of those beyond the line stand on each other. */
const BEYOND_HIGH = 5;
const GAP = 2;
/** The line ends at the latest after so many times as long as to the likely day: what comes later is told in words. */
const LONGER = 2.5;
/** A straggler is near where the line to it is no longer than so many times the line without. */
const NEAR = 1.25;

/** Lays twenty dots on a line of time; those later than its end are heaped behind it. */
export function layChance(chance: Chance, width: number): ChanceDrawing {
  const { today, likelyDays, by } = chance;
  const last = lastDay(chance);
  const days = likelyDays.filter((day) => day !== undefined).filter((day) => day <= last);
  const count = likelyDays.length - days.length;
  const columns = Math.ceil(count / BEYOND_HIGH);
  const step = 2 * RADIUS + GAP;
  const lineEnd = width - (count === 0 ? RADIUS : columns * step + 3 * RADIUS);
  const span = Math.max(1, daysBetween(today, last));
  const at = (date: CalendarDate) => (lineEnd * Math.max(0, daysBetween(today, date))) / span;
  const places = days.map((day) => Math.min(lineEnd, Math.max(RADIUS, at(day))));
  let radius = RADIUS;
  let dots = stackDots(places, 2 * radius + GAP);
  const heightOf = () => levelsOf(dots) * (2 * radius + GAP);
  while (heightOf() > MOST_HIGH && radius > LEAST_RADIUS) {
    radius -= 0.5;
    dots = stackDots(places, 2 * radius + GAP);
  }
  return {
    dots: dots.map((dot, index) => ({ ...dot, isInTime: by === undefined || (days[index] ?? "") <= by })),
    beyond: count === 0 ? undefined : { count, from: lineEnd + 3 * RADIUS, columns },
    radius,
    levels: Math.max(levelsOf(dots), Math.min(count, BEYOND_HIGH)),
    lineEnd,
    at,
    last,
  };
}

/**
 * The end of the line: the day it is wanted by and the likely one are on it, the very likely one and stragglers where they do
 * not press the first weeks together.
 */
function lastDay({ today, by, expected: { low, mid, high }, likelyDays }: Chance): CalendarDate {
  const known = likelyDays.filter((day) => day !== undefined);
  const likely = mid ?? low ?? known.at(-1) ?? today;
  const reach = latest([by ?? today, addDays(today, Math.round(LONGER * daysBetween(today, likely)))]);
  const end = high !== undefined && high <= reach ? latest([by ?? today, high]) : reach;
  const limit = addDays(today, Math.floor(NEAR * daysBetween(today, end)));
  return latest([end, known.findLast((day) => day <= limit) ?? end]);
}

const latest = (days: readonly CalendarDate[]) => days.reduce((a, b) => (a > b ? a : b));

function levelsOf(dots: readonly StackedDot[]): number {
  return Math.max(0, ...dots.map(({ level }) => level + 1));
}

/** Where a dot beyond the line stands: column and level. */
export function placeBeyond(index: number): { readonly column: number; readonly level: number } {
  return { column: Math.floor(index / BEYOND_HIGH), level: index % BEYOND_HIGH };
}
