import { isOnPage, onPage } from "#combo";
import { addDays, type CalendarDate, daysBetween, type Figure, type ReferenceLap } from "#domain";
import { periodAccount } from "../account/periodAccount.ts";
import { sectorAccount } from "../account/sectorAccount.ts";
import { datedBests } from "../bests/datedBests.ts";
import { sessionBests } from "../bests/sessionBests.ts";
import { type ComboQuestion, type ComboStanding, comboStanding } from "../combo/comboStanding.ts";
import { latestUsual } from "../combo/latestUsual.ts";
import { pageCurve } from "../combo/pageCurve.ts";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import { sectorsOf, timesOf } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { Choices } from "../laps/choices.ts";
import { levelGain } from "../level/levelGain.ts";
import { lapDistribution } from "../pace/lapDistribution.ts";
import type { ComboReview, SessionPoint } from "./comboReviewFigures.ts";
import { comparable } from "./comparable.ts";
import type { CurveOutlook } from "./curveOutlook.ts";
import { periodFigures } from "./periodFigures.ts";
import { reviewDetails } from "./reviewDetails.ts";
import { reviewTrends } from "./reviewTrends.ts";

/** What a combo is reviewed with. */
export interface ComboReviewInput extends ComboQuestion {
  /** First and last day; absent means open. */
  readonly period: { readonly from?: CalendarDate | undefined; readonly to?: CalendarDate | undefined };
  readonly references: readonly ReferenceLap[];
  readonly preferences: Choices;
  /** From `pageCurve`, where it has been drawn already. */
  readonly curve?: Figure<CurveOutlook> | undefined;
  /** From `comboStanding`, where it has been asked already. */
  readonly standing?: ComboStanding | undefined;
}

/** What the weeks say about one combo. */
export function comboReview(input: ComboReviewInput): ComboReview {
  const { period, today, preferences, standing = comboStanding(input) } = input;
  const all = input.digests.toSorted((a, b) => a.startedAt - b.startedAt);
  const digests = all.filter(isDrivenSession);
  const listed = all.filter(({ date }) => isWithin(date, period));
  const isPresent = (digest: SessionDigest) => isOnPage(standing.page, digest.startedAt);
  const inPeriod = digests.filter((digest) => isWithin(digest.date, period));
  const page = onPage(standing.page, digests);
  const drivenBefore = digests.filter(isBefore(period, today));
  const before = onPage(standing.page, drivenBefore);
  const now = onPage(standing.page, inPeriod);
  const bests = datedBests(page);
  const last = digests.at(-1);
  const against = comparable(now, before);
  const { marginPercent } = preferences;
  // A session that only a guest drove is listed, and is none of the driver's.
  const guestLaps = onPage(standing.page, listed).reduce((total, digest) => total + digest.guestLaps, 0);
  const details = reviewDetails({
    standing,
    curve: input.curve ?? pageCurve({ comboId: input.comboId, page, driven: digests, today }),
    all: digests,
    pages: input.pages,
    page,
    now,
    before,
    driven: inPeriod,
    against,
  });
  return {
    points: listed.map((digest) => pointOf(digest, isPresent(digest))),
    bests,
    latestUsual: latestUsual(page),
    sessionBests: sessionBests(page),
    ...periodFigures(now, inPeriod, marginPercent),
    before: periodFigures(before, drivenBefore, marginPercent),
    against,
    sessionsOnOldPages: inPeriod.length - now.length,
    guestLaps,
    gain: levelGain(standing.history, period),
    ...reviewTrends(now, page),
    ...periodAccount({ ...input, page: standing.page, digests: now, bests }),
    sectors: sectorAccount(sectorsOf(now, "paceBests")),
    distribution: lapDistribution(timesOf(now, "pace"), against.known ? timesOf(before, "pace") : []),
    ...details,
    targets: standing.targets,
    daysSinceLast: last === undefined ? undefined : daysBetween(last.date, today),
  };
}

function isWithin(date: CalendarDate, { from, to }: ComboReviewInput["period"]): boolean {
  return (from === undefined || date >= from) && (to === undefined || date <= to);
}

/** The days of the equally long period before; none where the period has no beginning. */
function isBefore({ from, to }: ComboReviewInput["period"], today: CalendarDate) {
  if (from === undefined) return () => false;
  const days = daysBetween(from, to ?? today) + 1;
  const earlier = { from: addDays(from, -days), to: addDays(from, -1) };
  return (digest: SessionDigest) => isWithin(digest.date, earlier);
}

function pointOf(digest: SessionDigest, isPresentPage: boolean): SessionPoint {
  const { sessionId, date, startedAt, pace, counts, mistakes, drivingMs } = digest;
  const { median, medianDecimals, lowerQuartile, upperQuartile, best, bestDecimals, bestOfTen, consistency } =
    pace;
  return {
    sessionId,
    date,
    startedAt,
    isPresentPage,
    laps: counts.driven,
    paceLaps: pace.laps,
    mistakes,
    drivingMs,
    median,
    medianDecimals,
    lowerQuartile,
    upperQuartile,
    best,
    bestDecimals,
    bestClean: digest.bestClean,
    bestOfTen,
    consistency: consistency.known
      ? {
          percent: consistency.value.percent,
          low: consistency.value.lowPercent,
          high: consistency.value.highPercent,
        }
      : undefined,
  };
}
