import { sayLapTime, sayUsual } from "#words";
import type { LineEnd } from "../frame/EndLabels.tsx";
import type { KeyItem } from "../frame/layKey.ts";
import type { PlacedCurve, PlacedStep } from "./ProgressLines.tsx";
import type { ProgressTarget } from "./progress.ts";

interface Lines {
  readonly steps: readonly PlacedStep[];
  readonly until: number;
  /** The usual lap of the session drawn last. */
  readonly usual: PlacedUsual | undefined;
  readonly targets: readonly ProgressTarget[];
  readonly curve: readonly PlacedCurve[];
  readonly right: number;
}

/** A usual lap at its place on the calendar axis. */
export interface PlacedUsual {
  readonly x: number;
  readonly ms: number;
  readonly decimals?: number | undefined;
}

/**
 * The words at the ends of the lines of the progress chart.
 * @param narrow a name and a time stand under each other
 */
export function progressEnds(lines: Lines, narrow: boolean): readonly LineEnd[] {
  const { steps, until, usual, targets, curve, right } = lines;
  const pb = steps.at(-1);
  const end = curve.at(-1);
  const broken = (name: string, time: string) => (narrow ? [name, time] : [`${name} ${time}`]);
  const usualEnd = (at: PlacedUsual): LineEnd => ({
    x: at.x,
    y: at.ms,
    lines: broken("usual", sayUsual(at.ms, at.decimals)),
    ink: "ink",
  });
  return [
    ...targets.map(({ ms, label }): LineEnd => {
      const time = label.lastIndexOf(" ");
      return { x: right, y: ms, lines: broken(label.slice(0, time), label.slice(time + 1)), ink: "ink" };
    }),
    ...(pb === undefined
      ? []
      : [
          {
            x: until,
            y: pb.ms,
            lines: broken("PB", sayLapTime(pb.ms, pb.decimals ?? 3)),
            ink: "accent",
          } as const,
        ]),
    ...(end !== undefined
      ? [{ x: end.x, y: end.ms, lines: sayBands(end, narrow), ink: "accent" } as const]
      : usual === undefined
        ? []
        : [usualEnd(usual)]),
  ];
}

function sayBands(end: PlacedCurve, narrow: boolean): readonly string[] {
  if (end.half === undefined || narrow) return ["level"];
  if (end.nineInTen === undefined) return ["level;", "band: half", "of the sessions"];
  return ["level;", "inner band: half", "of the sessions,", "outer: 9 in 10"];
}

/** What is drawn of the sessions, and of what is to come where its lines' ends have no room for words. */
interface Marks {
  readonly curve: readonly PlacedCurve[];
  /** One band and one line through all sessions. */
  readonly isBand: boolean;
  readonly hasBest: boolean;
  readonly hasBestOfTen: boolean;
  readonly narrow: boolean;
}

/** What the marks mean. */
export function progressKey({ curve, isBand, hasBest, hasBestOfTen, narrow }: Marks): readonly KeyItem[] {
  const items: readonly (KeyItem | false)[] = [
    { mark: isBand ? "line" : "tick", text: "usual lap" },
    { mark: isBand ? "halfBand" : "box", text: "half of the laps" },
    hasBest && { mark: "dot", text: "best pace lap" },
    hasBestOfTen && { mark: "ring", text: "best of ten" },
    narrow && curve.length > 1 && { mark: "short", text: "level" },
    narrow && curve.some(({ half }) => half) && { mark: "halfBand", text: "half of the sessions" },
    narrow && curve.some(({ nineInTen }) => nineInTen) && { mark: "paleBand", text: "both bands: 9 in 10" },
  ];
  return items.filter((item) => item !== false);
}
