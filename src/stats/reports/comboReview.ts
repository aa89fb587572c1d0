import { addDays, type CalendarDate, daysBetween, type Page, type ReferenceLap, type Target } from "#domain";
import { sectorAccount } from "../account/sectorAccount.ts";
import { shareWithinMargin } from "../pace/shareWithinMargin.ts";
import { wilsonInterval } from "../sample/wilsonInterval.ts";
import { bestLine } from "./bestLine.ts";
import type { ComboReview, DatedBest, SessionPoint } from "./comboReviewFigures.ts";
import { lapFlags } from "./digestFlags.ts";
import { paceSectors, timesWith } from "./digestLaps.ts";
import { addCounts, type Choices } from "./lapPlaces.ts";
import { pageHistory } from "./pageHistory.ts";
import { periodAccount } from "./periodAccount.ts";
import type { SessionDigest } from "./sessionDigest.ts";
import { sessionTrend, type TrendPoint } from "./sessionTrend.ts";

const CONFIDENCE = 0.9;
/** Half a percent of a lap is worth knowing about; a spread has to change by a quarter. */
const MEDIAN_WORTH_SHOWING = 0.005;
const SPREAD_WORTH_SHOWING = 0.25;

/** What a combo is reviewed with. */
export interface ComboReviewInput {
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
  const now = inPeriod.filter(isPresent);
  const bests = datedBests(page);
  const last = digests.at(-1);
  const sum = (field: "guestLaps" | "mistakes" | "drivingMs" | "clean" | "timed") =>
    now.reduce((total, digest) => total + digest[field], 0);
  const counts = addCounts(now.map((digest) => digest.counts));
  return {
    points: inPeriod.map((digest) => pointOf(digest, isPresent(digest))),
    bests,
    sessions: now.length,
    sessionsOnOldPages: inPeriod.length - now.length,
    counts,
    guestLaps: sum("guestLaps"),
    mistakes: sum("mistakes"),
    drivingMs: sum("drivingMs"),
    ...trends(now, page),
    cleanShare: wilsonInterval(sum("clean"), sum("timed"), CONFIDENCE),
    mistakeShare: wilsonInterval(Math.min(sum("mistakes"), counts.driven), counts.driven, CONFIDENCE),
    nearTheBest: shareWithinMargin(timesWith(now, lapFlags.clean), preferences.marginPercent, CONFIDENCE),
    ...periodAccount(now, bests, input.targets, input.references),
    sectors: sectorAccount(paceSectors(now)),
    distribution: {
      now: timesWith(now, lapFlags.pace).sort(),
      before: timesWith(page.filter(isBefore(period, today)), lapFlags.pace).sort(),
    },
    history: pageHistory(page),
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

function datedBests(page: readonly SessionDigest[]): DatedBest[] {
  const sessionOf = new Map(
    page.flatMap((digest) => digest.bestCandidates.map((candidate) => [candidate.lapId, digest] as const)),
  );
  return bestLine(page.flatMap((digest) => digest.bestCandidates)).flatMap((best) => {
    const digest = sessionOf.get(best.lapId);
    return digest === undefined ? [] : [{ ...best, sessionId: digest.sessionId, date: digest.date }];
  });
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

function trends(now: readonly SessionDigest[], page: readonly SessionDigest[]) {
  let driven = 0;
  const middleOf = new Map(
    page.map((digest) => {
      driven += digest.timedDriven;
      return [digest.sessionId, driven - digest.timedDriven / 2] as const;
    }),
  );
  const pointsOf = (figure: (digest: SessionDigest) => number | undefined) =>
    now.flatMap((digest): TrendPoint[] => {
      const value = figure(digest);
      const laps = middleOf.get(digest.sessionId) ?? 0;
      return value === undefined ? [] : [{ startedAt: digest.startedAt, laps, value }];
    });
  return {
    trend: sessionTrend(
      pointsOf(({ pace }) => pace.medianForTrend),
      "session with 5 pace laps",
      MEDIAN_WORTH_SHOWING,
    ),
    steadiness: sessionTrend(
      pointsOf(({ pace: { consistency } }) => (consistency.known ? consistency.value.percent : undefined)),
      "session with 5 exact pace laps",
      SPREAD_WORTH_SHOWING,
    ),
  };
}
