import type { AskedCombo } from "#db";
import { type CalendarDate, type Focus, type FormReading, readDate } from "#domain";
import type { readTime } from "#entry";
import { blankCombo, type KnownCombos, readCombo, type TypedCombo } from "./typedCombo.ts";

/** A session as it is typed before it starts. */
export interface TypedStart extends TypedCombo {
  readonly focus: Focus;
  readonly target: string;
  readonly conditions: string;
  readonly date: string;
}

/** What is typed into the start form, as it would be stored. */
export interface ReadStart {
  readonly on: AskedCombo;
  readonly focus: Focus;
  readonly targetMs?: number | undefined;
  readonly conditions?: string | undefined;
  /** Undefined where none is typed: it is that of the clock. */
  readonly date?: CalendarDate | undefined;
}

export const blankStart: TypedStart = {
  ...blankCombo,
  focus: "free",
  target: "",
  conditions: "",
  date: "",
};

/** What the form is read by. */
interface StartContext extends KnownCombos {
  readonly displayDecimals: number;
  /** Reads the target; undefined until it has been fetched, which the first sign of a target sets off. */
  readonly readTime: typeof readTime | undefined;
}

const notFetched = {
  at: 0,
  length: 0,
  wrong: "The target cannot be read yet: that part of the app is still being fetched.",
  right: "Wait a moment, or leave the target empty.",
};

/** Reads the start form: the session, or what is wrong in which field. */
export function readStart(
  typed: TypedStart,
  { displayDecimals, readTime: readTarget, ...known }: StartContext,
): FormReading<ReadStart, "car" | "track" | "target" | "date"> {
  const { focus, target, conditions, date } = typed;
  const on = readCombo(typed, known);
  const time =
    target.trim() === ""
      ? undefined
      : (readTarget?.(target, { displayDecimals }) ?? { ok: false as const, problem: notFetched });
  const day = date.trim() === "" ? undefined : readDate(date);
  if (!on.ok || time?.ok === false || day?.ok === false)
    return {
      ok: false,
      problems: {
        ...(!on.ok && on.problems),
        target: time?.ok === false ? time.problem : undefined,
        date: day?.ok === false ? day.problem : undefined,
      },
    };
  return {
    ok: true,
    value: {
      on: on.value,
      focus,
      targetMs: time?.ms,
      conditions: conditions.trim() || undefined,
      date: day?.date,
    },
  };
}
