import { sayLapTime } from "#words";
import type { LineEnd } from "../frame/EndLabels.tsx";
import type { KeyItem } from "../frame/layKey.ts";
import type { PlacedCurve, PlacedStep } from "./ProgressLines.tsx";
import type { ProgressTarget } from "./progress.ts";

interface Lines {
  readonly steps: readonly PlacedStep[];
  readonly until: number;
  readonly targets: readonly ProgressTarget[];
  readonly curve: readonly PlacedCurve[];
  readonly right: number;
  /** Whether any session has a best of ten to be drawn. */
  readonly hasBestOfTen: boolean;
}

/** The words at the ends of the lines of the progress chart. */
export function progressEnds({
  steps,
  until,
  targets,
  curve,
  right,
}: Omit<Lines, "hasBestOfTen">): readonly LineEnd[] {
  const pb = steps.at(-1);
  const end = curve.at(-1);
  return [
    ...targets.map(({ ms, label }): LineEnd => ({ x: right, y: ms, lines: [label], ink: "ink" })),
    ...(pb === undefined ? [] : [{ x: until, y: pb.ms, lines: [sayPb(pb)], ink: "accent" } as const]),
    ...(end === undefined ? [] : [{ x: end.x, y: end.ms, lines: sayBands(end), ink: "accent" } as const]),
  ];
}

function sayBands(end: PlacedCurve): readonly string[] {
  if (end.half === undefined) return ["level"];
  if (end.nineInTen === undefined) return ["level;", "band: half", "of the sessions"];
  return ["level;", "inner band: half", "of the sessions,", "outer: 9 in 10"];
}

function sayPb({ ms, decimals }: PlacedStep): string {
  return `PB ${sayLapTime(ms, decimals ?? 3)}`;
}

/** What the marks mean; with the lines too where their ends have no room for words. */
export function progressKey(
  { steps, targets, curve, hasBestOfTen }: Lines,
  withLines: boolean,
): readonly KeyItem[] {
  const marks: KeyItem[] = [
    { mark: "tick", text: "usual lap" },
    { mark: "box", text: "half of the laps" },
    { mark: "dot", text: "best pace lap" },
    ...(hasBestOfTen ? [{ mark: "ring", text: "best of ten" } as const] : []),
  ];
  if (!withLines) return marks;
  const pb = steps.at(-1);
  const lines: (KeyItem | undefined)[] = [
    pb && { mark: "solid", text: sayPb(pb) },
    ...targets.map(({ label }): KeyItem => ({ mark: "long", text: label })),
    curve.length > 1 ? { mark: "short", text: "level" } : undefined,
    curve.some((point) => point.half) ? { mark: "halfBand", text: "half of the sessions" } : undefined,
    curve.some((point) => point.nineInTen) ? { mark: "paleBand", text: "both bands: 9 in 10" } : undefined,
  ];
  return [...marks, ...lines.filter((item) => item !== undefined)];
}
