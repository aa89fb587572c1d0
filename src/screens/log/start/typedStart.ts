import type { AskedCombo } from "#db";
import type { CalendarDate, Focus, FormReading, PlannedRun } from "#domain";
import type { Readers } from "./readers.ts";
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
  /** The runs it is to have. */
  readonly plan?: readonly PlannedRun[] | undefined;
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
  /** Reads target and date; undefined until it has been fetched, which the opening of their part sets off. */
  readonly readers: Readers | undefined;
}

const notFetched = (what: "target" | "date") => ({
  ok: false as const,
  problem: {
    at: 0,
    length: 0,
    wrong: `The ${what} cannot be read yet: that part of the app is still being fetched.`,
    right: `Wait a moment, or leave the ${what} empty.`,
  },
});

/** Reads the start form: the session, or what is wrong in which field. */
export function readStart(
  typed: TypedStart,
  { displayDecimals, readers, ...known }: StartContext,
): FormReading<ReadStart, "car" | "track" | "target" | "date"> {
  const { focus, target, conditions, date } = typed;
  const on = readCombo(typed, known);
  const time =
    target.trim() === ""
      ? undefined
      : (readers?.readTime(target, { displayDecimals }) ?? notFetched("target"));
  const day = date.trim() === "" ? undefined : (readers?.readDate(date) ?? notFetched("date"));
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
