import { type AccountTarget, onPage, presentPage } from "#combo";
import { daysBetween, type Figure, type Id } from "#domain";
import { median } from "#numbers";
import type { AccountLines } from "../account/accountSteps.ts";
import { periodAccount } from "../account/periodAccount.ts";
import { sectorAccount } from "../account/sectorAccount.ts";
import { datedBests } from "../bests/datedBests.ts";
import { comboStanding } from "../combo/comboStanding.ts";
import { latestUsual } from "../combo/latestUsual.ts";
import { pageCurve } from "../combo/pageCurve.ts";
import { nextTarget } from "../combo/targetStates.ts";
import {
  type CornersInput,
  type CornersReport,
  type CornerWorth,
  cornersReport,
} from "../corners/cornersReport.ts";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import { sectorsOf } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { eveningSpread, eveningsInARow } from "../evenings/evenings.ts";
import { spreadSources } from "../evenings/spreadSources.ts";
import { staysOvernight } from "../evenings/staysOvernight.ts";
import type { CurveOutlook } from "../period/curveOutlook.ts";
import { breakCosts } from "../weeks/breakCosts.ts";
import type { CountedHabit, PlanCorner, PlanFacts } from "./planFacts.ts";
import { planOutcome, triedLines } from "./planOutcome.ts";

/** What the facts of a plan are gathered from. */
export interface PlanInput extends CornersInput {
  readonly comboId: Id;
  /** A rig test of the combo that waits for its next run. */
  readonly rigTest: PlanFacts["rigTest"];
  /** From `pageCurve`, where it has been drawn already. */
  readonly curve?: Figure<CurveOutlook> | undefined;
}

/** The evenings a plan looks back on: enough for an account, few enough to be of now. */
const EVENINGS = 6;
/** Between two runs, where nobody noted how long the evening was. Common practice, no source. */
const MINUTES_BETWEEN = 2;
const MINUTE = 60_000;
/** Reviews from which what was said most often is a habit. */
const LEAST_REVIEWS = 2;

/** The figures that a plan is drafted from: of the last six evenings of the combo's present page, by the functions that tell them elsewhere. */
export function gatherFacts(input: PlanInput): PlanFacts {
  const { comboId, digests, pages, today, targets, references, preferences, sessions, rigTest } = input;
  const span = presentPage(pages, today);
  const all = digests.filter(isDrivenSession).toSorted((a, b) => a.startedAt - b.startedAt);
  const page = onPage(span, all);
  const late = page.slice(-EVENINGS);
  const { history, targets: states } = comboStanding({ comboId, digests, pages, targets, today });
  // An evening of drills alone says nothing of where time goes, and would take the place of one that does.
  const paced = page.filter(({ counts }) => counts.pace + counts.mistake > 0).slice(-EVENINGS);
  const bests = datedBests(page);
  const { account, accounts } = periodAccount({ digests: paced, bests, page: span, targets, references });
  const lines = account.known
    ? account.value.odd === undefined
      ? account.value
      : account.value.odd.without
    : undefined;
  const report = cornersReport(input);
  const { curve = pageCurve({ comboId, page, driven: all, today }) } = input;
  const target = nextTarget(states);
  const last = all.at(-1);
  const usual = latestUsual(page);
  return {
    driven: {
      sessions: page.length,
      laps: page.reduce((sum, { counts }) => sum + counts.driven, 0),
      before: all.length - page.length,
    },
    evening: usualEvening(late.length > 0 ? late : all.slice(-EVENINGS)),
    daysSince: last && daysBetween(last.date, today),
    lastBreak: lastBreak(history),
    account: lines && account.known ? { ...linesOf(lines), laps: account.value.laps } : undefined,
    against: againstOne(accounts.flatMap(({ target: aim }) => aim?.from ?? [])),
    evenings: paced.length,
    lost: {
      laps: paced.reduce((sum, { counts }) => sum + counts.driven - counts.outOrIn, 0),
      lost: paced.reduce((sum, { mistakes }) => sum + mistakes, 0),
    },
    corners: report.order
      .flatMap((number) => report.corners.filter((one) => one.number === number))
      .map(cornerOf),
    sector: sectorOf(report.sector, page),
    rigTest,
    overnight: staysOvernight(eveningsInARow(page)),
    spread: spreadSources(eveningSpread(page, curve.known ? curve.value.line : [])),
    target:
      target?.by === undefined
        ? undefined
        : {
            kind: target.kind,
            value: target.value,
            by: target.by,
            days: daysBetween(today, target.by),
            ...(target.laps !== undefined && { laps: target.laps }),
            ...(target.process !== undefined && { process: target.process }),
          },
    usual: usual?.ms,
    usualOn: usual?.date,
    best: bests.at(-1)?.ms,
    scatter: median(
      paced.flatMap(({ pace: { consistency } }) => (consistency.known ? [consistency.value.scatterMs] : [])),
    ),
    races: late.filter(({ counts }) => counts.race > 0).length,
    tried: sessions
      .toSorted((a, b) => b.session.startedAt - a.session.startedAt)
      .flatMap(({ session: { plan = [] }, runs }) =>
        triedLines(planOutcome(plan, runs, preferences)).reverse(),
      ),
  };
}

/** Sessions without anything to measure against are in no account. */
function againstOne(from: readonly AccountTarget["from"][]): AccountTarget["from"] | undefined {
  const [first, ...others] = new Set(from);
  return others.length === 0 ? first : undefined;
}

function linesOf({ pace, repeatability, mistakes, others, balance }: AccountLines): AccountLines {
  return { pace, repeatability, mistakes, others, balance };
}

/** Laps, minutes and the length of a lap of the middle one of some evenings. */
function usualEvening(evenings: readonly SessionDigest[]): PlanFacts["evening"] {
  const driven = evenings.filter(({ drivingMs }) => drivingMs > 0);
  const laps = median(driven.map(({ counts }) => counts.driven));
  const lapMs = median(driven.map(({ counts, drivingMs }) => drivingMs / counts.driven));
  const minutes = median(
    driven.map(
      ({ sittingMs, drivingMs, runFacts }) =>
        (sittingMs ?? drivingMs + MINUTES_BETWEEN * MINUTE * Math.max(0, runFacts.length - 1)) / MINUTE,
    ),
  );
  if (laps === undefined || lapMs === undefined || minutes === undefined) return undefined;
  return { laps: Math.max(1, Math.round(laps)), minutes: Math.max(1, Math.round(minutes)), lapMs };
}

function lastBreak(history: Parameters<typeof breakCosts>[0]): PlanFacts["lastBreak"] {
  const over = breakCosts(history).findLast(({ lapsUntilBack }) => lapsUntilBack !== undefined);
  return over?.lapsUntilBack === undefined ? undefined : { days: over.days, laps: over.lapsUntilBack };
}

function cornerOf({ number, worth, unused, mistakes, habits }: CornerWorth): PlanCorner {
  const road = unused.known && !unused.value.nothingToGain ? unused.value : undefined;
  return {
    number,
    worth,
    unused: road?.ms.mid,
    mistakes: mistakes.mistakes,
    laps: mistakes.laps,
    mistakesMs: mistakes.ms,
    braking: habitOf(habits.braking),
    throttle: habitOf(habits.throttle),
    gap: road && road.largest.metres > 0 ? { at: road.largest.at, metres: road.largest.metres } : undefined,
  };
}

/** What most of the reviews said, if it is nothing right. */
function habitOf<W extends "right" | "early" | "late" | "twice">(
  said: readonly { readonly what: W; readonly count: number }[],
): CountedHabit<Exclude<W, "right">> | undefined {
  const of = said.reduce((sum, { count }) => sum + count, 0);
  const [most] = said;
  if (most === undefined || most.count < LEAST_REVIEWS || most.count * 2 <= of || most.what === "right")
    return undefined;
  return { what: most.what as Exclude<W, "right">, count: most.count, of };
}

/** The sector that the answer about corners names, with its usual time in the last session that has sectors. */
function sectorOf(sector: CornersReport["sector"], page: readonly SessionDigest[]): PlanFacts["sector"] {
  const latest = page.findLast(({ sectorCount }) => sectorCount > 0);
  const account = sectorAccount(latest === undefined ? [] : sectorsOf([latest], "paceBests"));
  const usual = sector && account.known ? account.value.sectors[sector.sector - 1]?.usual : undefined;
  return sector && usual !== undefined ? { sector: sector.sector, ms: sector.ms, usual } : undefined;
}
