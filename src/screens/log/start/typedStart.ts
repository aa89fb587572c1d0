import type { ComboWithNames, NewCombo } from "#db";
import { type CalendarDate, type Focus, type FormReading, type Id, readDate } from "#domain";
import { readTime } from "#entry";
import { likelyMeant, type Names, pickedCombo, problemOfLikely, problemOfName } from "./comboChoice.ts";

/** A session as it is typed before it starts. */
export interface TypedStart {
  readonly car: string;
  readonly track: string;
  /** Names that were said to be new, though others are like them. */
  readonly newCar: string;
  readonly newTrack: string;
  readonly focus: Focus;
  readonly target: string;
  readonly conditions: string;
  readonly date: string;
}

/** What is typed into the start form, as it would be stored. */
export interface ReadStart {
  readonly on: { readonly comboId: Id } | { readonly combo: NewCombo };
  readonly focus: Focus;
  readonly targetMs: number | undefined;
  readonly conditions: string | undefined;
  /** Undefined where none is typed: it is that of the clock. */
  readonly date: CalendarDate | undefined;
}

export const blankStart: TypedStart = {
  car: "",
  track: "",
  newCar: "",
  newTrack: "",
  focus: "free",
  target: "",
  conditions: "",
  date: "",
};

/** The known names that what is typed is likely meant for, as long as nobody has said that it is new. */
export function meantBy({ car, track, newCar, newTrack }: TypedStart, names: Names) {
  const meant = likelyMeant(car, track, names);
  return {
    car: newCar === car ? undefined : meant.car,
    track: newTrack === track ? undefined : meant.track,
  };
}

/** Reads the start form: the session, or what is wrong in which field. */
export function readStart(
  typed: TypedStart,
  {
    names,
    combos,
    displayDecimals,
  }: { readonly names: Names; readonly combos: readonly ComboWithNames[]; readonly displayDecimals: number },
): FormReading<ReadStart, "car" | "track" | "target" | "date"> {
  const { car, track, focus, target, conditions, date } = typed;
  const time = target.trim() === "" ? undefined : readTime(target, { displayDecimals });
  const day = date.trim() === "" ? undefined : readDate(date);
  const meant = meantBy(typed, names);
  const problems = {
    car: problemOfName(car, "car", "club hatch") ?? problemOfLikely(meant.car),
    track: problemOfName(track, "track layout", "Varnholt Ring") ?? problemOfLikely(meant.track),
    target: time?.ok === false ? time.problem : undefined,
    date: day?.ok === false ? day.problem : undefined,
  };
  if (Object.values(problems).some(Boolean)) return { ok: false, problems };
  return {
    ok: true,
    value: {
      on: pickedCombo(car, track, combos),
      focus,
      targetMs: time?.ok ? time.ms : undefined,
      conditions: conditions.trim() || undefined,
      date: day?.ok ? day.date : undefined,
    },
  };
}
