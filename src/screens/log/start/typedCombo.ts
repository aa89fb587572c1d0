import type { AskedCombo, ComboWithNames } from "#db";
import type { FormReading } from "#domain";
import { likelyMeant, type Names, pickedCombo, problemOfLikely, problemOfName } from "./comboChoice.ts";

/** A combo as it is typed: by the names of its car and its track layout. */
export interface TypedCombo {
  readonly car: string;
  readonly track: string;
  /** Names that were said to be new, though others are like them. */
  readonly newCar: string;
  readonly newTrack: string;
}

export const blankCombo: TypedCombo = { car: "", track: "", newCar: "", newTrack: "" };

/** What can be picked from, and the combos it comes from. */
export interface KnownCombos {
  readonly names: Names;
  readonly combos: readonly ComboWithNames[];
}

/** The known names that what is typed is likely meant for, as long as nobody has said that it is new. */
export function meantBy({ car, track, newCar, newTrack }: TypedCombo, names: Names) {
  const meant = likelyMeant(car, track, names);
  return {
    car: newCar === car ? undefined : meant.car,
    track: newTrack === track ? undefined : meant.track,
  };
}

/** Reads two names: the combo they mean, which may have to be made, or what is wrong with which of them. */
export function readCombo(
  typed: TypedCombo,
  { names, combos }: KnownCombos,
): FormReading<AskedCombo, "car" | "track"> {
  const { car, track } = typed;
  const meant = meantBy(typed, names);
  const problems = {
    car: problemOfName(car, "car", "club hatch") ?? problemOfLikely(meant.car),
    track: problemOfName(track, "track layout", "Varnholt Ring") ?? problemOfLikely(meant.track),
  };
  return problems.car || problems.track
    ? { ok: false, problems }
    : { ok: true, value: pickedCombo(car, track, combos) };
}
