import type { Figure, Id, Page } from "#domain";
import { type AccountChange, accountChange } from "../account/accountChange.ts";
import { reachableLap } from "../account/reachableLap.ts";
import { type LapOfSectors, sumOfBestSectors } from "../account/sumOfBestSectors.ts";
import type { ComboStanding } from "../combo/comboStanding.ts";
import { accountLaps, sectorsOf, timesOf } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { chanceNowBeats } from "../evenings/chanceNowBeats.ts";
import { eveningSpread, eveningsInARow } from "../evenings/evenings.ts";
import { type SpreadSources, spreadSources } from "../evenings/spreadSources.ts";
import { type Overnight, staysOvernight } from "../evenings/staysOvernight.ts";
import { type SittingThirds, sittingThirds } from "../session/sittingThirds.ts";
import { type Break, breaksOf } from "./breaksOf.ts";
import type { Comparable } from "./comparable.ts";
import type { CurveOutlook } from "./curveOutlook.ts";
import { type FactorGroups, factorGroups } from "./factorGroups.ts";
import { factors } from "./factors.ts";
import type { PageSession } from "./pageHistory.ts";
import { type PeriodShift, periodShift } from "./periodShift.ts";

/** What the review says beside trend and account. */
export interface ReviewDetails {
  /** The page's practice curve on the calendar. */
  readonly curve: Figure<CurveOutlook>;
  /** Median of the sessions, against those of the equally long period before. */
  readonly shift: Figure<PeriodShift>;
  /** Scatter of the sessions in percent, against the same before. */
  readonly scatterShift: Figure<PeriodShift>;
  readonly accountChange: Figure<AccountChange>;
  /** Sum of best sectors of clean laps, and the lap of lower quartiles of pace laps that may be a best. */
  readonly bestSectors: Figure<LapOfSectors>;
  readonly reachable: Figure<LapOfSectors>;
  readonly thirds: Figure<SittingThirds>;
  readonly factors: readonly FactorGroups[];
  /** Breaks that ended in the period, across pages. */
  readonly breaks: readonly Break[];
  /** Sessions of the page with a median, from its beginning. */
  readonly history: readonly PageSession[];
  /** How an evening begins against how the one before ended, and where the spread comes from: of the whole page. */
  readonly overnight: Figure<Overnight>;
  readonly spread: Figure<SpreadSources>;
  /** Chance that a pace lap of the period beats one of the equally long period before. */
  readonly nowBeats: Figure<number>;
}

/** What the details are worked out from: sessions of the present page in time order. */
export interface DetailsInput {
  readonly standing: ComboStanding;
  readonly curve: Figure<CurveOutlook>;
  /** All of the combo, and its new pages: a break is one whatever page was driven on. */
  readonly all: readonly SessionDigest[];
  readonly pages: readonly Page[];
  readonly page: readonly SessionDigest[];
  readonly now: readonly SessionDigest[];
  readonly before: readonly SessionDigest[];
  /** Of the period, older pages too: their laps were practice all the same. */
  readonly driven: readonly SessionDigest[];
  /** Whether the period may be compared with the one before. */
  readonly against: Figure<Comparable>;
}

/** The figures of the five questions that rest on more than one chapter. */
export function reviewDetails(input: DetailsInput): ReviewDetails {
  const { curve, page, now, before, against } = input;
  const { history } = input.standing;
  const days = new Set(input.driven.map(({ date }) => date));
  const levelOf = levels(curve, history);
  return {
    curve,
    shift: against.known ? periodShift(medians(now), medians(before)) : against,
    scatterShift: against.known ? periodShift(scatters(now), scatters(before)) : against,
    accountChange: against.known ? accountChange(now.map(accountLaps), before.map(accountLaps)) : against,
    bestSectors: sumOfBestSectors(sectorsOf(now, "bests")),
    reachable: reachableLap(sectorsOf(now, "paceBests")),
    thirds: sittingThirds(now),
    factors: factors.map((factor) => factorGroups(now, factor, levelOf)),
    breaks: breaksOf(input.all, input.pages).filter(({ to }) => days.has(to)),
    history,
    overnight: staysOvernight(eveningsInARow(page)),
    spread: spreadSources(eveningSpread(page, curve.known ? curve.value.line : [])),
    nowBeats: against.known ? chanceNowBeats(paceLaps(before), paceLaps(now)) : against,
  };
}

const paceLaps = (digests: readonly SessionDigest[]) => digests.map((digest) => timesOf([digest], "pace"));

const medians = (digests: readonly SessionDigest[]) =>
  digests.flatMap(({ pace }) => (pace.medianForTrend === undefined ? [] : [pace.medianForTrend]));

const scatters = (digests: readonly SessionDigest[]) =>
  digests.flatMap(({ pace }) => (pace.consistency.known ? [pace.consistency.value.percent] : []));

/** The curve's level at a session, and the latest known one at a session without a median; 0 where there is no curve. */
function levels(curve: Figure<CurveOutlook>, history: readonly PageSession[]): (id: Id) => number {
  if (!curve.known) return () => 0;
  const { line } = curve.value;
  const at = new Map(line.map(({ sessionId, mid }) => [sessionId, mid]));
  const fallback = line.at(-1)?.mid ?? history.at(-1)?.medianMs ?? 0;
  return (id) => at.get(id) ?? fallback;
}
