import {
  type CalendarDate,
  type FormReading,
  formatLapTime,
  isCalendarDate,
  readDate,
  type TargetKind,
} from "#domain";
import { readTime } from "#entry";
import type { ForecastKind } from "#stats";

/** Whether a target of this kind is set and changed here. */
export function isMeasured(kind: TargetKind): kind is ForecastKind {
  return kind === "best" || kind === "median";
}

const STEP = 500;

/** A time that could be wanted next, of the length of the laps there: the nearest half second under the figure now. */
export function exampleUnder(nowMs: number): string {
  return formatLapTime(Math.max(STEP, STEP * (Math.ceil(nowMs / STEP) - 1)));
}

/** A target as it is being typed. */
export interface TypedTarget {
  readonly comboId: string;
  readonly kind: ForecastKind;
  readonly value: string;
  readonly by: string;
  readonly process: string;
}

/** A target as it would be stored. */
export interface ReadTarget {
  readonly kind: ForecastKind;
  readonly value: number;
  readonly by: CalendarDate;
  readonly process: string | undefined;
}

interface TargetContext {
  /** The figure now, from which short forms are completed. */
  readonly nearMs: number | undefined;
  readonly displayDecimals: number;
}

/** Reads what was typed: the target, or what is wrong in which field. */
export function readTarget(
  typed: TypedTarget,
  context: TargetContext,
): FormReading<ReadTarget, "value" | "by"> {
  const time = readTime(typed.value, context);
  const { by } = typed;
  const day = readDate(by);
  const problems = {
    ...(!time.ok && { value: time.problem }),
    ...(!day.ok && {
      by: isCalendarDate(by)
        ? day.problem
        : { wrong: "No whole date is chosen.", right: "Pick the day it should be reached by." },
    }),
  };
  if (!time.ok || !day.ok) return { ok: false, problems };
  const process = typed.process.trim();
  return {
    ok: true,
    value: { kind: typed.kind, value: time.ms, by: day.date, process: process === "" ? undefined : process },
  };
}
