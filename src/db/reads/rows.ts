import {
  type CalendarDate,
  type CornerReview,
  type Forecast,
  type Id,
  type Page,
  type Plan,
  type Preferences,
  type ReferenceLap,
  type RigSettings,
  type RigTest,
  rigOn,
  type Target,
} from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { defaultPreferences, preferencesId } from "../preferencesRow.ts";
import { isLive, within } from "./ranges.ts";

/** The logbook's preferences, with defaults for what the driver never chose. */
export async function preferences(book: ReadOnlyLogbook): Promise<Preferences> {
  const row = await book.tables.preferences.get(preferencesId);
  return { id: preferencesId, createdAt: 0, updatedAt: 0, ...defaultPreferences, ...row };
}

/** Records of rig settings, oldest first. */
export function rigs(book: ReadOnlyLogbook): Promise<RigSettings[]> {
  return book.tables.rigs.orderBy("from").filter(isLive).toArray();
}

/** The rig settings in force on a date: the last record from that day or before it. */
export async function rigInForce(book: ReadOnlyLogbook, on: CalendarDate): Promise<RigSettings | undefined> {
  return rigOn(await book.tables.rigs.where("from").belowOrEqual(on).filter(isLive).toArray(), on);
}

/** Pages turned for a combo, oldest first; none while its first page lasts. */
export function pagesOfCombo(book: ReadOnlyLogbook, comboId: Id): Promise<Page[]> {
  return within(book.tables.pages, "[comboId+from]", comboId).filter(isLive).toArray();
}

/** Every page turned in the logbook. */
export function pages(book: ReadOnlyLogbook): Promise<Page[]> {
  return book.tables.pages.toCollection().filter(isLive).toArray();
}

/** Every reference lap of the logbook. */
export function references(book: ReadOnlyLogbook): Promise<ReferenceLap[]> {
  return book.tables.references.toCollection().filter(isLive).toArray();
}

/** Targets of a combo, the one set first comes first, archived ones too. */
export async function targetsOfCombo(book: ReadOnlyLogbook, comboId: Id): Promise<Target[]> {
  const rows = await book.tables.targets.where("comboId").equals(comboId).filter(isLive).toArray();
  return rows.sort((a, b) => a.setAt - b.setAt);
}

/** Every target of the logbook, archived ones too. */
export function targets(book: ReadOnlyLogbook): Promise<Target[]> {
  return book.tables.targets.toCollection().filter(isLive).toArray();
}

/** What was said about the chances of a target, oldest first. */
export async function forecastsOfTarget(book: ReadOnlyLogbook, targetId: Id): Promise<Forecast[]> {
  const rows = await book.tables.forecasts.where("targetId").equals(targetId).filter(isLive).toArray();
  return rows.sort((a, b) => (a.madeOn < b.madeOn ? -1 : 1));
}

/** Every forecast of the logbook: the app's own record. */
export function forecasts(book: ReadOnlyLogbook): Promise<Forecast[]> {
  return book.tables.forecasts.toCollection().filter(isLive).toArray();
}

/** Reference laps of a combo, fastest first. */
export async function referencesOfCombo(book: ReadOnlyLogbook, comboId: Id): Promise<ReferenceLap[]> {
  const rows = await book.tables.references.where("comboId").equals(comboId).filter(isLive).toArray();
  return rows.sort((a, b) => a.ms - b.ms);
}

/** Rig tests, oldest first; of one combo, or of all. */
export async function rigTests(book: ReadOnlyLogbook, comboId?: Id): Promise<RigTest[]> {
  const table = book.tables.rigTests;
  const asked = comboId === undefined ? table.toCollection() : table.where("comboId").equals(comboId);
  return (await asked.filter(isLive).toArray()).sort((a, b) => a.createdAt - b.createdAt);
}

/** Corner reviews of a combo, oldest first. */
export function cornerReviewsOfCombo(book: ReadOnlyLogbook, comboId: Id): Promise<CornerReview[]> {
  return within(book.tables.cornerReviews, "[comboId+on]", comboId).filter(isLive).toArray();
}

/** Plans of sessions to come with a combo, the one changed last comes first. */
export async function plansOfCombo(book: ReadOnlyLogbook, comboId: Id): Promise<Plan[]> {
  const rows = await book.tables.plans.where("comboId").equals(comboId).filter(isLive).toArray();
  return rows.sort((a, b) => b.updatedAt - a.updatedAt);
}

/** Plans kept as templates, by name. */
export async function planTemplates(book: ReadOnlyLogbook): Promise<Plan[]> {
  const rows = await book.tables.plans.toCollection().filter(isLive).toArray();
  return rows
    .filter(({ comboId }) => comboId === undefined)
    .sort((a, b) => (a.name ?? "").localeCompare(b.name ?? "", "en"));
}
