import { defaultPreferences } from "#db";
import { type SessionDigest, sessionDigest } from "#stats";
import type { ComboKey } from "./combos.ts";
import type { DrivenEvening } from "./driveEvening.ts";
import { pageOfEvening } from "./driveSeason.ts";

/** What the app read from a combo's page on the evening of a date: for figures that it would have written down then. */
export function pageDigests(
  season: readonly DrivenEvening[],
  combo: ComboKey,
  date: string,
): SessionDigest[] {
  const page = pageOfEvening(combo, date);
  return digestsUpTo(
    season.filter(({ evening }) => pageOfEvening(combo, evening.date) === page),
    combo,
    date,
  );
}

/** The same of the combo, on all its pages. */
export function digestsUpTo(
  season: readonly DrivenEvening[],
  combo: ComboKey,
  date: string,
): SessionDigest[] {
  return season
    .filter(({ evening }) => evening.combo === combo && evening.date <= date)
    .map(({ session, runs }) => sessionDigest(session, runs, defaultPreferences));
}
