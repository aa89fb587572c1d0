import {
  type CalendarDate,
  type FieldProblem,
  type FormReading,
  formatLapTime,
  isCalendarDate,
  isTimeKind,
  type Reading,
  readDate,
  runRanges,
  type TargetKind,
} from "#domain";
import { type Measure, readMeasure, readTime, writeMeasure } from "#entry";

const STEP = 500;

/** A time that could be wanted next, of the length of the laps there: the nearest half second under the figure now. */
export function exampleUnder(nowMs: number): string {
  return formatLapTime(Math.max(STEP, STEP * (Math.ceil(nowMs / STEP) - 1)));
}

/** A target as it is being typed. */
export interface TypedTarget {
  readonly comboId: string;
  readonly kind: TargetKind;
  /** Of a mean of laps in a row. */
  readonly laps: string;
  readonly value: string;
  readonly by: string;
  readonly process: string;
  readonly why: string;
  readonly note: string;
}

/** A target as it would be stored. */
export interface ReadTarget {
  readonly kind: TargetKind;
  readonly laps: number | undefined;
  readonly value: number;
  readonly by: CalendarDate;
  readonly process: string | undefined;
  readonly why: string | undefined;
  readonly note: string | undefined;
}

interface TargetContext {
  /** The figure now, from which short forms of a time are completed. */
  readonly nearMs: number | undefined;
  readonly displayDecimals: number;
}

/** A mean of one lap is a best lap. */
const inARow: Measure = {
  name: "Laps in a row",
  unit: "",
  least: 2,
  most: runRanges.laps.most,
  isWhole: true,
};
/** What is no lap time: stored in ms, and in thousandths. */
const measures = {
  scatter: { name: "Scatter", unit: "s", stored: 1000, least: 0.01, most: 60 },
  cleanShare: { name: "Share of clean laps", unit: "%", stored: 10, least: 1, most: 100 },
} as const satisfies Partial<Readonly<Record<TargetKind, Measure>>>;

/** Reads what was typed: the target, or what is wrong in which field. */
export function readTarget(
  typed: TypedTarget,
  context: TargetContext,
): FormReading<ReadTarget, "laps" | "value" | "by"> {
  const { kind, by } = typed;
  const laps = lapsOf(typed);
  const value = figureOf(typed, context);
  const day = readDate(by);
  const problems = {
    ...(!laps.ok && { laps: laps.problem }),
    ...(!value.ok && { value: value.problem }),
    ...(!day.ok && {
      by: isCalendarDate(by)
        ? day.problem
        : { wrong: "No whole date is chosen.", right: "Pick the day it should be reached by." },
    }),
  };
  if (!laps.ok || !value.ok || !day.ok) return { ok: false, problems };
  const [process, why, note] = [typed.process, typed.why, typed.note].map((text) => text.trim() || undefined);
  return {
    ok: true,
    value: { kind, laps: laps.value, value: value.value, by: day.date, process, why, note },
  };
}

/** The number of laps of a mean; undefined where it is no mean, or no number. */
export function typedLaps(typed: Pick<TypedTarget, "kind" | "laps">): number | undefined {
  const laps = lapsOf(typed);
  return laps.ok ? laps.value : undefined;
}

type Read<V> =
  | { readonly ok: true; readonly value: V }
  | { readonly ok: false; readonly problem: FieldProblem };

function lapsOf({ kind, laps }: Pick<TypedTarget, "kind" | "laps">): Read<number | undefined> {
  return kind === "meanOf"
    ? filled(readMeasure(laps, inARow), "How many laps?", inARow)
    : { ok: true, value: undefined };
}

function figureOf({ kind, value }: TypedTarget, context: TargetContext): Read<number> {
  if (isTimeKind(kind)) {
    const time = readTime(value, context);
    return time.ok ? { ok: true, value: time.ms } : time;
  }
  const measure = measures[kind];
  const read = filled(readMeasure(value, measure), "Nothing is typed.", measure);
  return read.ok ? { ok: true, value: Math.round(read.value) } : read;
}

/** A figure that has to be there. */
function filled(
  read: Reading<{ readonly value: number | undefined }>,
  wrong: string,
  { least, most, unit }: Measure,
): Read<number> {
  if (!read.ok) return read;
  if (read.value !== undefined) return { ok: true, value: read.value };
  return {
    ok: false,
    problem: { wrong, right: `Write a number from ${least} to ${most}${unit === "" ? "" : ` ${unit}`}.` },
  };
}

/** A stored figure as its field shows it. */
export function writeTarget(kind: TargetKind, value: number): string {
  return isTimeKind(kind) ? formatLapTime(value) : writeMeasure(value, measures[kind]);
}
