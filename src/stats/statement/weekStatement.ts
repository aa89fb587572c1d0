import {
  addCounts,
  addDays,
  type CalendarDate,
  type Id,
  type Page,
  type ReferenceLap,
  type Target,
} from "#domain";
import { type WorkOn, workOn } from "../account/workOn.ts";
import { datedBests } from "../bests/datedBests.ts";
import { figureForTarget } from "../combo/figureForTarget.ts";
import { latestUsual } from "../combo/latestUsual.ts";
import { isTargetReached } from "../combo/nextTarget.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { Choices } from "../laps/choices.ts";
import { comboReview } from "../period/comboReview.ts";
import type { ComboReview, DatedBest } from "../period/comboReviewFigures.ts";

/** Days looked back over for the trend at the end of the week. */
const TREND_DAYS = 84;

/** A combo driven in the week, with its whole history. */
export interface WeekCombo {
  readonly comboId: Id;
  readonly digests: readonly SessionDigest[];
  readonly pages: readonly Page[];
  readonly targets: readonly Target[];
  readonly references: readonly ReferenceLap[];
}

/** One combo's line of the week: what was driven, and what was brought forward and carried forward, ms. */
export interface WeekLine {
  readonly comboId: Id;
  readonly sessions: number;
  readonly laps: number;
  readonly guestLaps: number;
  readonly drivingMs: number;
  readonly mistakes: number;
  /** PB of the present page before the week and at its end; a page turned meanwhile begins afresh. */
  readonly bestBefore: DatedBest | undefined;
  readonly best: DatedBest | undefined;
  /** Usual lap of the last session with five pace laps before the week, and of the last one in it. */
  readonly usualBefore: number | undefined;
  readonly usual: number | undefined;
}

/** A target as it stood at the end of the week. */
export interface WeekTarget {
  readonly target: Target;
  /** The figure now, in the target's unit. */
  readonly now: number | undefined;
  readonly isReached: boolean;
  /** Reached at the end of the week, not before it. */
  readonly isNewlyReached: boolean;
}

/** What stands behind the finding and the advice: the combo driven most. */
export interface WeekMain {
  readonly comboId: Id;
  /** The week alone. */
  readonly week: ComboReview;
  /** The twelve weeks to its end. */
  readonly season: ComboReview;
  /** The largest line of the week's time account, and the sector that holds most of it, from 0. */
  readonly workOn: WorkOn | undefined;
}

/** One week in ledger form. Sessions after it change nothing; reference laps and archived targets are those of today. */
export interface WeekStatement {
  readonly monday: CalendarDate;
  readonly sunday: CalendarDate;
  readonly days: readonly { readonly date: CalendarDate; readonly laps: number }[];
  /** Most laps first. */
  readonly lines: readonly WeekLine[];
  /** Sums of the lines. */
  readonly total: Pick<WeekLine, "sessions" | "laps" | "guestLaps" | "drivingMs" | "mistakes">;
  readonly targets: readonly WeekTarget[];
  readonly main: WeekMain | undefined;
}

/** What a week is stated from. */
export interface WeekStatementInput {
  readonly monday: CalendarDate;
  /** Combos without a session in the week only lend their targets. */
  readonly combos: readonly WeekCombo[];
  readonly preferences: Choices;
}

/** The statement of one week. */
export function weekStatement({ monday, combos, preferences }: WeekStatementInput): WeekStatement {
  const sunday = addDays(monday, 6);
  const known = combos.map((combo) => asOf(combo, sunday));
  const isInWeek = ({ date }: SessionDigest) => date >= monday;
  const driven = known
    .filter(({ digests }) => digests.some(isInWeek))
    .map((combo) => ({ combo, line: lineOf(combo, monday) }))
    .toSorted((a, b) => b.line.laps - a.line.laps || (a.line.comboId < b.line.comboId ? -1 : 1));
  const lines = driven.map(({ line }) => line);
  const sum = (field: keyof WeekStatement["total"]) => lines.reduce((all, line) => all + line[field], 0);
  const inWeek = known.flatMap(({ digests }) => digests.filter(isInWeek));
  const main = driven[0];
  return {
    monday,
    sunday,
    days: Array.from({ length: 7 }, (_, day) => {
      const date = addDays(monday, day);
      return { date, laps: lapsOf(inWeek.filter((digest) => digest.date === date)) };
    }),
    lines,
    total: {
      sessions: sum("sessions"),
      laps: sum("laps"),
      guestLaps: sum("guestLaps"),
      drivingMs: sum("drivingMs"),
      mistakes: sum("mistakes"),
    },
    targets: known.flatMap((combo) => targetsOf(combo, monday)).toSorted(byDate),
    main: main && mainOf(main.combo, monday, sunday, preferences),
  };
}

interface Known extends WeekCombo {
  /** The sessions of the page that was the present one on the Sunday. */
  readonly page: readonly SessionDigest[];
}

/** What was known of a combo on a day: no later session, and no page turned after its last one. */
function asOf(combo: WeekCombo, day: CalendarDate): Known {
  const digests = combo.digests
    .filter(({ date }) => date <= day)
    .toSorted((a, b) => a.startedAt - b.startedAt);
  const lastAt = digests.at(-1)?.startedAt ?? Number.NEGATIVE_INFINITY;
  const pages = combo.pages.filter(({ from }) => from <= lastAt);
  const pageFrom = pages.reduce((latest, { from }) => Math.max(latest, from), Number.NEGATIVE_INFINITY);
  return {
    ...combo,
    digests,
    pages,
    targets: combo.targets.filter(
      ({ setOn, setAt, archivedAt }) => setOn <= day && setAt >= pageFrom && archivedAt === undefined,
    ),
    page: digests.filter(({ startedAt }) => startedAt >= pageFrom),
  };
}

function lineOf({ comboId, digests, page }: Known, monday: CalendarDate): WeekLine {
  const own = digests.filter(({ date }) => date >= monday);
  const sum = (field: "guestLaps" | "drivingMs" | "mistakes") =>
    own.reduce((all, digest) => all + digest[field], 0);
  const before = page.filter(({ date }) => date < monday);
  return {
    comboId,
    sessions: own.length,
    laps: lapsOf(own),
    guestLaps: sum("guestLaps"),
    drivingMs: sum("drivingMs"),
    mistakes: sum("mistakes"),
    bestBefore: datedBests(before).at(-1),
    best: datedBests(page).at(-1),
    usualBefore: latestUsual(before),
    usual: latestUsual(page.filter(({ date }) => date >= monday)),
  };
}

function lapsOf(digests: readonly SessionDigest[]): number {
  return addCounts(digests.map(({ counts }) => counts)).driven;
}

function targetsOf({ targets, page }: Known, monday: CalendarDate): WeekTarget[] {
  const before = page.filter(({ date }) => date < monday);
  return targets
    .filter(({ by = monday }) => by >= monday)
    .map((target) => {
      const isReached = isTargetReached(target, page);
      const isNewlyReached = isReached && !isTargetReached(target, before);
      return { target, now: figureForTarget(target, page), isReached, isNewlyReached };
    });
}

/** The nearest date first, without a date last. */
function byDate(a: WeekTarget, b: WeekTarget): number {
  const [dayA, dayB] = [a.target.by ?? "9999-12-31", b.target.by ?? "9999-12-31"];
  return dayA < dayB ? -1 : dayA > dayB ? 1 : a.target.setAt - b.target.setAt;
}

function mainOf(combo: Known, monday: CalendarDate, sunday: CalendarDate, preferences: Choices): WeekMain {
  const reviewSince = (from: CalendarDate) =>
    comboReview({ ...combo, period: { from, to: sunday }, today: sunday, preferences });
  const week = reviewSince(monday);
  return {
    comboId: combo.comboId,
    week,
    season: reviewSince(addDays(sunday, 1 - TREND_DAYS)),
    workOn: workOn(week.account, week.sectors),
  };
}
