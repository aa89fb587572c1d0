import { defaultPreferences, preferencesId } from "#db";
import type { AllRows, Page, Preferences } from "#domain";
import type { DrivenEvening } from "./driveEvening.ts";
import { driveSeason } from "./driveSeason.ts";
import { makeForecasts } from "./forecasts.ts";
import { makeGainTest, stampTest } from "./gainTest.ts";
import { makeNames, type Names } from "./names.ts";
import { newPage } from "./newPage.ts";
import { makeReviews } from "./reviews.ts";
import { makeRigs, type Rigs } from "./rigs.ts";
import { firstDay, instantAt } from "./season.ts";
import { stamper } from "./stamps.ts";
import { makeTemplates } from "./templates.ts";
import { makeReferences, makeTargets } from "./wishes.ts";

/** The demo logbook's rows, and what the generator knows about them. */
export interface Book {
  readonly rows: AllRows;
  readonly names: Names;
  readonly rigs: Rigs;
  readonly season: readonly DrivenEvening[];
}

/** Makes the whole demo logbook; always the same one. */
export function makeBook(): Book {
  const stamp = stamper();
  const rigs = makeRigs(stamp);
  const names = makeNames(stamp);
  const { comboIds } = names;
  const tested = stampTest(stamp);
  const season = driveSeason(comboIds, rigs, tested.id, stamp);
  const sessions = season.map(({ session }) => session);
  const turnedAt = instantAt(newPage.date, newPage.clock);
  const page: Page = {
    ...stamp(turnedAt),
    comboId: comboIds[newPage.combo],
    from: turnedAt,
    reason: newPage.reason,
  };
  const begun = instantAt(firstDay, "19:55");
  const preferences: Preferences = {
    ...defaultPreferences,
    id: preferencesId,
    createdAt: begun,
    updatedAt: begun,
  };
  const targets = makeTargets(stamp, comboIds, season);
  const { cars, tracks, layouts, combos } = names;
  const rows: AllRows = {
    preferences: [preferences],
    cars,
    tracks,
    layouts,
    combos,
    pages: [page],
    references: makeReferences(stamp, comboIds),
    sessions,
    runs: season.flatMap(({ runs }) => runs),
    rigs: Object.values(rigs),
    targets: targets.map(({ target }) => target),
    forecasts: targets.flatMap((one) => makeForecasts(stamp, one, { season, pages: [page] })),
    rigTests: [makeGainTest(tested, comboIds.moorHatch, rigs)],
    cornerReviews: makeReviews(stamp, comboIds, sessions),
    plans: makeTemplates(stamp),
  };
  return { rows, names, rigs, season };
}
