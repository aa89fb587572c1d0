import { type StripLap, stripMark } from "#domain";
import { thinPoints } from "../frame/thinPoints.ts";
import { farMark, lapMark, type MarkPiece } from "./lapMarks.ts";
import { type StripLines, type StripScale, stripScale } from "./stripScale.ts";

/** The sizes of a strip: to be read from a metre, across a desk, across a phone, in a row. Everything in it is px. */
const sizes = {
  large: { height: 200, radius: 7, side: 12, edge: 22, plot: 46, foot: 32, footEdge: 18, leastStep: 3 },
  full: { height: 120, radius: 4.5, side: 8, edge: 14, plot: 28, foot: 20, footEdge: 12, leastStep: 3 },
  narrow: { height: 76, radius: 4, side: 6, edge: 11, plot: 22, foot: 16, footEdge: 10, leastStep: 3 },
  small: { height: 24, radius: 2, side: 1, edge: 4.5, plot: 8, foot: 3, footEdge: 4, leastStep: 2 },
} as const;

export type StripSize = keyof typeof sizes;

/** A strip begins at the left and grows: so many laps fill it, and from then on they move together. */
const fewestSlots = 10;
/** The gap between two runs, in laps. */
const runGap = 0.7;

/** Where one lap of a strip lies. */
export interface LapPlaceInStrip {
  readonly lap: StripLap;
  readonly x: number;
  readonly y: number;
  /** Beyond which edge its time lies. */
  readonly far?: "up" | "down" | undefined;
}

/** A line across the strip, or the edge beyond which it lies. */
export interface DrawnLine {
  readonly of: keyof StripLines;
  readonly y: number;
  readonly beyond: "up" | "down" | undefined;
}

/** All that is drawn of a strip. */
export interface StripDrawing {
  readonly places: readonly LapPlaceInStrip[];
  /** Pieces of one ink and kind are one path, so that a strip of many laps costs no more than one of few. */
  readonly paths: readonly MarkPiece[];
  readonly lines: readonly DrawnLine[];
  readonly height: number;
  /** Ends of the lines across. */
  readonly left: number;
  readonly right: number;
  /** Distance between two laps, px. */
  readonly step: number;
}

interface StripToLay {
  readonly laps: readonly StripLap[];
  readonly lines: StripLines;
  /** Taken from its own laps and lines where it is not given. */
  readonly scale: StripScale | undefined;
  readonly size: StripSize;
  readonly width: number;
}

/**
 * Lays the laps of a strip out: in order from left to right, a slower lap higher, a gap between two runs. What lies beyond
 * the scale stands at the edge under a sign; a lap without a time stands there by itself. More laps than there is room for
 * are thinned to those that keep the shape.
 */
export function layStrip({ laps, lines, scale, size, width }: StripToLay): StripDrawing {
  const { height, radius, side, edge, plot, foot, footEdge, leastStep } = sizes[size];
  const used = scale ?? stripScale(laps, lines);
  const [left, right] = [side, Math.max(side, width - side)];
  const y = (ms: number) => {
    if (used === undefined) return plot;
    const span = Math.max(1, used.slowest - used.fastest);
    return plot + ((used.slowest - ms) / span) * (height - foot - plot);
  };
  const beyond = (ms: number): DrawnLine["beyond"] =>
    used !== undefined && ms > used.slowest
      ? "up"
      : used !== undefined && ms < used.fastest
        ? "down"
        : undefined;
  const place = (lap: StripLap, index: number) => {
    const far = lap.ms === undefined ? undefined : beyond(lap.ms);
    const atEdge = lap.ms === undefined || far === "up";
    return {
      lap,
      x: index,
      y: atEdge ? edge : far === "down" ? height - footEdge : y(lap.ms as number),
      far,
    };
  };
  const most = Math.max(3, Math.floor((right - left) / leastStep));
  const kept = thinPoints(laps.map(place), most);
  const gaps = gapsBefore(kept.map(({ lap }) => lap.run ?? 0));
  const step = (right - left) / Math.max(fewestSlots, kept.length + (gaps.at(-1) ?? 0));
  const r = Math.min(radius, Math.max(step * 0.42, leastStep * 0.42));
  const places = kept.map((one, index) => ({
    ...one,
    x: left + (index + 0.5 + (gaps[index] ?? 0)) * step,
  }));
  return {
    places,
    paths: joined(places.flatMap((one) => piecesOf(one, r, radius))),
    lines: lineKeys.flatMap((of): DrawnLine[] => {
      const ms = lines[of]?.ms;
      if (ms === undefined) return [];
      const far = beyond(ms);
      return [{ of, y: far === "up" ? edge : far === "down" ? height - footEdge : y(ms), beyond: far }];
    }),
    height,
    left,
    right,
    step,
  };
}

const lineKeys = ["usual", "level", "pb", "target"] as const;

/** How much room the gaps between runs take before each lap. */
function gapsBefore(runs: readonly number[]): number[] {
  let gap = 0;
  return runs.map((run, index) => {
    if (index > 0 && run !== runs[index - 1]) gap += runGap;
    return gap;
  });
}

function piecesOf({ lap, x, y, far }: LapPlaceInStrip, r: number, radius: number): MarkPiece[] {
  const pieces = lapMark(lap, x, y, r);
  if (far === undefined || stripMark(lap) === "noTime") return pieces;
  return [...pieces, farMark(x, far === "up" ? y - radius * 1.6 : y + radius * 1.6, r, far)];
}

/** Rings first, so that a dot beside one is not hidden by it. */
const order = ["ring", "filled", "drawn"] as const;

function joined(pieces: readonly MarkPiece[]): MarkPiece[] {
  const paths = new Map<string, { -readonly [Key in keyof MarkPiece]: MarkPiece[Key] }>();
  for (const piece of pieces) {
    const key = `${piece.how} ${piece.ink}`;
    const before = paths.get(key);
    if (before === undefined) paths.set(key, { ...piece });
    else before.path += piece.path;
  }
  return [...paths.values()].sort((a, b) => order.indexOf(a.how) - order.indexOf(b.how));
}
