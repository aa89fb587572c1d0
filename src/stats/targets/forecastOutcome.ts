import { isOnPage, type PageSpan, pageOf } from "#combo";
import {
  addDays,
  type CalendarDate,
  type Figure,
  type Forecast,
  known,
  latestMs,
  type Page,
  type Target,
  unknown,
} from "#domain";
import { exactRuns } from "../combo/exactRuns.ts";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { bestInARow } from "../pace/bestInARow.ts";

/** What a forecast is scored by. */
export interface OutcomeQuestion {
  readonly forecast: Forecast;
  /** The target it was about, deleted or not; its own figures rule where it has kept them. */
  readonly target: WantedThen | undefined;
  /** Of the combo, in any order. */
  readonly digests: readonly SessionDigest[];
  readonly pages: readonly Page[];
  readonly today: CalendarDate;
}

/** What a forecast was about. */
export type WantedThen = Pick<Target, "kind" | "value" | "laps">;

/** What was wanted when a forecast was made, or, in rows that do not say, what its target wants; undefined where nothing tells. */
export function wantedThen(forecast: Forecast, target: WantedThen | undefined): WantedThen | undefined {
  const { kind = target?.kind, value = target?.value, laps = target?.laps } = forecast;
  if (kind === undefined || value === undefined) return undefined;
  return { kind, value, ...(laps !== undefined && { laps }) };
}

/**
 * Whether what was forecast came: a session after the forecast and up to its date whose best lap, usual lap or best mean of so
 * many laps in a row was surely there, as the chance had it. Only once the date has passed: scored as soon as they are reached,
 * successes would come into the record before failures of the same day.
 * What is known of one whose target is gone for good is what was found while it was there.
 * @returns a reason before its date has passed, where its times compare with none later, and where nothing says what it was about
 */
export function forecastOutcome(question: OutcomeQuestion): Figure<boolean> {
  const { forecast, target, digests, pages, today } = question;
  const { createdAt, by, reached } = forecast;
  if (by >= today) return unknown({ because: "date to come" });
  const wanted = wantedThen(forecast, target);
  if (wanted === undefined)
    return reached === undefined ? unknown({ because: "target gone" }) : known(reached);
  const page = pageOf(pages, createdAt);
  const coming = digests.filter(
    (digest) =>
      isDrivenSession(digest) &&
      digest.startedAt > createdAt &&
      digest.date <= by &&
      isOnPage(page, digest.startedAt),
  );
  if (coming.some((digest) => isThere(digest, wanted))) return known(true);
  return endsBefore(page, by) ? unknown({ because: "page turned before its date" }) : known(false);
}

function isThere(digest: SessionDigest, { kind, value, laps = 1 }: WantedThen): boolean {
  const { bestClean, pace } = digest;
  switch (kind) {
    case "best":
      return bestClean !== undefined && latestMs(bestClean) <= value;
    case "median":
      return pace.medianForTrend !== undefined && pace.medianForTrend <= value;
    case "meanOf":
      return (bestInARow(exactRuns(digest), laps)?.meanMs ?? Number.POSITIVE_INFINITY) <= value;
    default:
      return false;
  }
}

/** Whether a page was turned before a day was over. */
function endsBefore({ to }: PageSpan, by: CalendarDate): boolean {
  return to < Date.parse(addDays(by, 1));
}
