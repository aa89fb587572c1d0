import { type KeyboardEvent, useState } from "react";
import { betweenParts, unbroken } from "#domain";

/** A point the driver can stop at: where it lies, and what is read out there. */
export interface WalkPoint {
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** What Enter or a click opens, if anything. */
  readonly id?: string;
}

/** Points that belong together, in order of x: "usual lap". */
export interface WalkSeries {
  readonly name: string;
  readonly points: readonly WalkPoint[];
}

/** Where the walk stands. */
export interface WalkPlace {
  readonly series: number;
  readonly at: number;
}

export interface Walk {
  readonly point: WalkPoint | undefined;
  /** Words for the eye: of the first series, which is what the chart is of, without its name. */
  readonly text: string;
  /** Words for the ear where the keyboard brought us here. */
  readonly spoken: string;
  readonly onKeyDown: (event: KeyboardEvent) => void;
  /** The pointer is over this point of the series it walks in; undefined when it has left. */
  readonly onPointAt: (at: number | undefined) => void;
  /** The pointer was pressed at this point: the first time reads it and stays, the second opens it. */
  readonly onPress: (at: number) => void;
  /** The points the pointer may stop at. */
  readonly points: readonly WalkPoint[];
  readonly open: (() => void) | undefined;
}

/** Behind the words of a point that was pressed once. */
const pressAgain = `${betweenParts}${unbroken("press again to open")}`;

/** Walks the points of a chart: arrows, Home and End, Page by ten, Up and Down between series, Escape leaves. */
export function useWalk(all: readonly WalkSeries[], onOpen?: (id: string) => void): Walk {
  const series = all.filter((one) => one.points.length > 0);
  const [place, setPlace] = useState<WalkPlace | undefined>(undefined);
  const [held, setHeld] = useState<WalkPlace | undefined>(undefined);
  const [spoken, setSpoken] = useState("");
  const current = series[place?.series ?? 0];
  const point = place === undefined ? undefined : current?.points[place.at];
  const id = point?.id;
  const open = id !== undefined && onOpen !== undefined ? () => onOpen(id) : undefined;

  const isHeld = place !== undefined && place.at === held?.at && place.series === held.series;
  const inSeries = place?.series ?? 0;
  const leave = () => {
    setPlace(undefined);
    setHeld(undefined);
    setSpoken("");
  };
  const goTo = (next: WalkPlace) => {
    const there = series[next.series];
    setPlace(next);
    setSpoken(sayPlace(there, next.at, next.series !== place?.series));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.target !== event.currentTarget) return;
    if (event.key === "Enter" && open !== undefined) open();
    else if (event.key === "Escape" && point !== undefined) leave();
    else {
      const next = nextPlace(event.key, series, point === undefined ? undefined : place);
      if (next === undefined) return;
      goTo(next);
    }
    event.preventDefault();
    event.stopPropagation();
  };

  return {
    point,
    text:
      place === undefined
        ? ""
        : `${sayPlace(current, place.at, place.series > 0)}${isHeld && open !== undefined ? pressAgain : ""}`,
    spoken,
    onKeyDown,
    onPointAt: (at) => setPlace(at === undefined ? held : { series: inSeries, at }),
    onPress: (at) => {
      if (held?.at === at && held.series === inSeries) open?.();
      else {
        setPlace({ series: inSeries, at });
        setHeld({ series: inSeries, at });
      }
    },
    points: current?.points ?? [],
    open,
  };
}

function sayPlace(series: WalkSeries | undefined, at: number, named: boolean): string {
  const text = series?.points[at]?.text ?? "";
  return named && series !== undefined && text !== "" ? `${series.name}. ${text}` : text;
}

/** Where a key leads; undefined for keys that lead nowhere. */
export function nextPlace(
  key: string,
  series: readonly WalkSeries[],
  place: WalkPlace | undefined,
): WalkPlace | undefined {
  const here = place ?? { series: 0, at: -1 };
  const points = series[here.series]?.points ?? [];
  const last = points.length - 1;
  if (last < 0) return undefined;
  const within = (at: number): WalkPlace => ({ series: here.series, at: Math.min(last, Math.max(0, at)) });
  switch (key) {
    case "ArrowRight":
      return within(here.at + 1);
    case "ArrowLeft":
      return within(place === undefined ? last : here.at - 1);
    case "Home":
      return within(0);
    case "End":
      return within(last);
    case "PageDown":
      return within(here.at + 10);
    case "PageUp":
      return within(here.at - 10);
    case "ArrowDown":
      return otherSeries(here, series, 1);
    case "ArrowUp":
      return otherSeries(here, series, -1);
    default:
      return undefined;
  }
}

/** The point of the series beside this one that lies nearest in x. */
function otherSeries(here: WalkPlace, series: readonly WalkSeries[], step: 1 | -1): WalkPlace {
  const target = Math.min(series.length - 1, Math.max(0, here.series + step));
  const x = series[here.series]?.points[Math.max(0, here.at)]?.x ?? 0;
  return { series: target, at: nearestAt(series[target]?.points ?? [], x, (point) => point.x) };
}

/** Index of the item nearest to a value; 0 for none. */
export function nearestAt<T>(items: readonly T[], value: number, placeOf: (item: T) => number): number {
  let nearest = 0;
  let least = Number.POSITIVE_INFINITY;
  items.forEach((item, index) => {
    const distance = Math.abs(placeOf(item) - value);
    if (distance < least) {
      least = distance;
      nearest = index;
    }
  });
  return nearest;
}
