import {
  addCounts,
  addDays,
  type CalendarDate,
  daysBetween,
  type Id,
  type Page,
  type ReferenceLap,
  type Target,
} from "#domain";
import { CONFIDENCE } from "#numbers";
import { periodAccount } from "../account/periodAccount.ts";
import { sectorAccount } from "../account/sectorAccount.ts";
import { datedBests } from "../bests/datedBests.ts";
import { sessionBests } from "../bests/sessionBests.ts";
import { sectorsOf, timesOf } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { Choices } from "../laps/choices.ts";
import { lapDistribution } from "../pace/lapDistribution.ts";
import { wilsonInterval } from "../sample/wilsonInterval.ts";
import { nearSessionBest } from "../session/nearSessionBest.ts";
import type { ComboReview, SessionPoint } from "./comboReviewFigures.ts";
import { reviewDetails } from "./reviewDetails.ts";
import { reviewTrends } from "./reviewTrends.ts";

/** What a combo is reviewed with. */
export interface ComboReviewInput {
  readonly comboId: Id;
  /** All digests of the combo, in any order. */
  readonly digests: readonly SessionDigest[];
  /** New pages of the combo. */
  readonly pages: readonly Pick<Page, "from">[];
  /** First and last day; absent means open. */
  readonly period: { readonly from?: CalendarDate | undefined; readonly to?: CalendarDate | undefined };
  readonly today: CalendarDate;
  readonly targets: readonly Target[];
  readonly references: readonly ReferenceLap[];
  readonly preferences: Choices;
}

/** What the weeks say about one combo. */
export function comboReview(input: ComboReviewInput): ComboReview {
  const { pages, period, today, preferences } = input;
  const digests = input.digests.toSorted((a, b) => a.startedAt - b.startedAt);
  const pageFrom = pages.reduce((latest, page) => Math.max(latest, page.from), Number.NEGATIVE_INFINITY);
  const isPresent = (digest: SessionDigest) => digest.startedAt >= pageFrom;
  const inPeriod = digests.filter((digest) => isWithin(digest.date, period));
  const page = digests.filter(isPresent);
  const drivenBefore = digests.filter(isBefore(period, today));
  const before = drivenBefore.filter(isPresent);
  const now = inPeriod.filter(isPresent);
  const bests = datedBests(page);
  const last = digests.at(-1);
  const sum = (field: "guestLaps" | "mistakes" | "drivingMs" | "clean" | "timed") =>
    now.reduce((total, digest) => total + digest[field], 0);
  const counts = addCounts(now.map((digest) => digest.counts));
  return {
    points: inPeriod.map((digest) => pointOf(digest, isPresent(digest))),
    bests,
    sessionBests: sessionBests(page),
    sessions: now.length,
    sessionsOnOldPages: inPeriod.length - now.length,
    counts,
    guestLaps: sum("guestLaps"),
    mistakes: sum("mistakes"),
    drivingMs: sum("drivingMs"),
    ...reviewTrends(now, page),
    cleanShare: wilsonInterval(sum("clean"), sum("timed"), CONFIDENCE),
    mistakeShare: wilsonInterval(Math.min(sum("mistakes"), counts.driven), counts.driven, CONFIDENCE),
    nearTheBest: nearSessionBest(
      now.map((digest) => timesOf([digest], "paceBests")),
      preferences.marginPercent,
    ),
    ...periodAccount(now, bests, input.targets, input.references),
    sectors: sectorAccount(sectorsOf(now, "paceBests")),
    distribution: lapDistribution(timesOf(now, "pace"), timesOf(before, "pace")),
    ...reviewDetails({
      comboId: input.comboId,
      page,
      now,
      before,
      driven: inPeriod,
      drivenBefore,
      today,
      marginPercent: preferences.marginPercent,
    }),
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
  const { median, lowerQuartile, upperQuartile, best, bestOfTen, consistency } = pace;
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
    lowerQuartile,
    upperQuartile,
    best,
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
