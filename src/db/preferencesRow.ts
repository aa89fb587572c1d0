import type { Preferences } from "#domain";
import type { Fields } from "./writes/stamp.ts";

/** The one preferences row has the same id everywhere, so that two copies of a logbook merge into one row. */
export const preferencesId = "00000000-0000-7000-8000-000000000001";

/** What holds until the driver says otherwise. */
export const defaultPreferences: Fields<Preferences> = {
  displayDecimals: 3,
  relativeTo: "lap",
  dayStartsAt: 4,
  settlingLaps: 0,
  marginPercent: 0.5,
};
