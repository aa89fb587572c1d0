import { addDays, type CalendarDate, daysBetween } from "#domain";
import type { TargetStep } from "#stats";

/** A value on a day. */
interface Known {
  readonly date: CalendarDate;
  readonly value: number;
}

/** A target on its way, in the target's unit. */
export interface Way {
  /** The wanted value, the day by which, and the day it was set. */
  readonly value: number;
  readonly by: CalendarDate | undefined;
  readonly setOn: CalendarDate;
  /** The figure when it was set. */
  readonly start: number | undefined;
  /** What was known since, in time order. */
  readonly points: readonly Known[];
  readonly today: CalendarDate;
  /** A personal best holds until the next one: its line has steps. */
  readonly isStepped: boolean;
  /** Steps to come, the target last; none where it is not open. */
  readonly steps: readonly TargetStep[];
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Where everything of the picture stands, px. */
export interface WayDrawing {
  readonly setAt: number;
  readonly todayAt: number;
  readonly byAt: number | undefined;
  readonly wantedY: number;
  /** The line of what was known, as a path, and its beginning and end. */
  readonly known: string;
  readonly first: Spot;
  readonly now: Spot;
  /** How it goes on where half of what may come does: through the steps, up to the edge of the picture. */
  readonly ahead: string;
  readonly steps: readonly Spot[];
  /** The wanted value on its day. */
  readonly goal: Spot | undefined;
}

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** How far beyond its date the picture goes for the sake of the likely day: a share of the time from its setting. */
const BEYOND = 0.5;
/** Without a date the picture looks so many days ahead. */
const AHEAD = 42;

/**
 * Lays a target's way in a frame: time to the right, slower is higher.
 * @returns undefined where neither its start nor anything since is known
 */
export function layWay(way: Way, frame: Frame): WayDrawing | undefined {
  const { value, by, setOn, today, isStepped, steps } = way;
  const known = knownPoints(way);
  const [first] = known;
  const last = known.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const isOver = by !== undefined && by < today;
  const until = isOver ? by : today;
  const x = daysOn(setOn, lastDay(way), frame);
  const y = valuesOn([value, ...known.map((point) => point.value)], frame);
  const spot = (date: CalendarDate, at: number): Spot => ({ x: x(date), y: y(at) });
  const now = spot(until, last.value);
  const stops = steps.map(({ ms, by: on }, index) => spot(on ?? evenly(way, index), ms));
  const isLikely = steps.length > 0 && steps.every(({ by: on }) => on !== undefined);
  return {
    setAt: x(setOn),
    todayAt: x(until),
    byAt: by === undefined ? undefined : x(by),
    wantedY: y(value),
    known: lineOf([...known.map((point) => spot(point.date, point.value)), now], isStepped),
    first: spot(first.date, first.value),
    now,
    ahead: isLikely ? lineOf(cutAt([now, ...stops], frame.right), false) : "",
    steps: stops.slice(0, -1).filter((stop) => stop.x <= frame.right),
    goal: by === undefined ? undefined : spot(by, value),
  };
}

function knownPoints({ setOn, start, points }: Way): readonly Known[] {
  return start === undefined ? points : [{ date: setOn, value: start }, ...points];
}

/** The last day of the picture: its date, or the likely day where that is not far behind it. */
function lastDay({ setOn, by, today, steps }: Way): CalendarDate {
  const end = by ?? addDays(today, AHEAD);
  const likely = steps.at(-1)?.by;
  if (likely === undefined || likely <= end) return end;
  const most = addDays(end, Math.round(BEYOND * daysBetween(setOn, end)));
  return likely < most ? likely : most;
}

/** A step that no day is known of: evenly between today and the date, where it had to be to come there in time. */
function evenly({ today, by, steps }: Way, index: number): CalendarDate {
  const days = daysBetween(today, by ?? addDays(today, AHEAD));
  return addDays(today, Math.round((days * (index + 1)) / steps.length));
}

function daysOn(from: CalendarDate, to: CalendarDate, { left, right }: Frame) {
  const days = Math.max(1, daysBetween(from, to));
  return (date: CalendarDate) => left + ((right - left) * daysBetween(from, date)) / days;
}

function valuesOn(values: readonly number[], { top, bottom }: Frame) {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const range = Math.max(1, high - low);
  return (value: number) => bottom - ((bottom - top) * (value - low)) / range;
}

function lineOf(spots: readonly Spot[], isStepped: boolean): string {
  return spots
    .map(({ x, y }, index) => {
      if (index === 0) return `M${px(x)} ${px(y)}`;
      return isStepped ? `H${px(x)}V${px(y)}` : `L${px(x)} ${px(y)}`;
    })
    .join("");
}

/** The spots up to an edge, and where the line meets it. */
function cutAt(spots: readonly Spot[], edge: number): readonly Spot[] {
  const beyond = spots.findIndex(({ x }) => x > edge);
  const [before, after] = [spots[beyond - 1], spots[beyond]];
  if (before === undefined || after === undefined) return spots;
  const share = (edge - before.x) / (after.x - before.x);
  return [...spots.slice(0, beyond), { x: edge, y: before.y + share * (after.y - before.y) }];
}

const px = (value: number) => value.toFixed(1);
