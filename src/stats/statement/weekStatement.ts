import { isInForce, nearestFirst, onPage, targetOnDay } from "#combo";
import { addCounts, addDays, type CalendarDate, type Figure, type Id, type ReferenceLap } from "#domain";
import { type WorkOn, workOn } from "../account/workOn.ts";
import type { DatedBest } from "../bests/datedBest.ts";
import { datedBests } from "../bests/datedBests.ts";
import { type ComboQuestion, type ComboStanding, comboStanding } from "../combo/comboStanding.ts";
import { latestUsual, type UsualLap } from "../combo/latestUsual.ts";
import { pageCurve } from "../combo/pageCurve.ts";
import { seasonBegins } from "../combo/season.ts";
import type { TargetState } from "../combo/targetStates.ts";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { Choices } from "../laps/choices.ts";
import { levelGain } from "../level/levelGain.ts";
import type { LevelGain } from "../level/levelOver.ts";
import { comboReview } from "../period/comboReview.ts";
import type { ComboReview } from "../period/comboReviewFigures.ts";

/** Days that a week is held against: four weeks. */
export const LATELY_DAYS = 28;

/** A combo driven in the week, with its whole history. */
export interface WeekCombo extends Omit<ComboQuestion, "today"> {
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
  /** Clean laps among the timed ones. */
  readonly clean: number;
  readonly timed: number;
  /** Laps of Monday to Sunday. */
  readonly days: readonly number[];
  /** PB of the present page before the week and at its end; a page turned meanwhile begins afresh. */
  readonly bestBefore: DatedBest | undefined;
  readonly best: DatedBest | undefined;
  /** Usual lap of the last session with five pace laps before the week, and of the last one in it. */
  readonly usualBefore: UsualLap | undefined;
  readonly usual: UsualLap | undefined;
  /**
   * How far the level has moved over the four weeks to the Sunday, or to today in the week of today: a week against a week
   * can only be chance.
   */
  readonly lately: Figure<LevelGain>;
}

/** A target that ruled in the week, as it stood at its end. */
export interface WeekTarget extends TargetState {
  /** Reached in the week. */
  readonly isNewlyReached: boolean;
}

/** What stands behind the finding and the advice: the combo driven most. */
export interface WeekMain {
  readonly comboId: Id;
  /** The week alone. */
  readonly week: ComboReview;
  /** The twelve weeks to its end, or to today in the week of today. */
  readonly season: ComboReview;
  /** The largest line of the week's time account, and the sector that holds most of it, from 0. */
  readonly workOn: WorkOn | undefined;
  /** The same of the twelve weeks. */
  readonly seasonWorkOn: WorkOn | undefined;
}

/** One week in ledger form. Sessions after it change nothing. */
export interface WeekStatement {
  readonly monday: CalendarDate;
  readonly sunday: CalendarDate;
  /** The day as of which all figures stand: the Sunday, or today in the week of today. */
  readonly asOf: CalendarDate;
  readonly days: readonly { readonly date: CalendarDate; readonly laps: number }[];
  /** Most laps first. */
  readonly lines: readonly WeekLine[];
  /** Sums of the lines. */
  readonly total: Pick<
    WeekLine,
    "sessions" | "laps" | "guestLaps" | "drivingMs" | "mistakes" | "clean" | "timed" | "days"
  >;
  readonly targets: readonly WeekTarget[];
  readonly main: WeekMain | undefined;
}

/** What a week is stated from. */
export interface WeekStatementInput {
  readonly monday: CalendarDate;
  /** The day it is asked on: a week that is not over stands as of then, as on every other screen. */
  readonly today: CalendarDate;
  /** Combos without a session in the week only lend their targets. */
  readonly combos: readonly WeekCombo[];
  readonly preferences: Choices;
}

/** The statement of one week. */
export function weekStatement({ monday, today, combos, preferences }: WeekStatementInput): WeekStatement {
  const sunday = addDays(monday, 6);
  const day = today < sunday ? today : sunday;
  const known = combos.map((combo) => asOf(combo, sunday, day));
  const isInWeek = ({ date }: SessionDigest) => date >= monday;
  const driven = known
    .filter(({ digests }) => digests.some((digest) => isInWeek(digest) && isShown(digest)))
    .map((combo) => ({ combo, line: lineOf(combo, monday) }))
    .toSorted((a, b) => b.line.laps - a.line.laps || (a.line.comboId < b.line.comboId ? -1 : 1));
  const lines = driven.map(({ line }) => line);
  const sum = (field: Exclude<keyof WeekStatement["total"], "days">) =>
    lines.reduce((all, line) => all + line[field], 0);
  const all = known.flatMap(({ digests }) => digests);
  const main = driven.find(({ line }) => line.laps > 0);
  const days = lapsByDay(all, monday);
  return {
    monday,
    sunday,
    asOf: day,
    days: days.map((laps, index) => ({ date: addDays(monday, index), laps })),
    lines,
    total: {
      sessions: sum("sessions"),
      laps: sum("laps"),
      guestLaps: sum("guestLaps"),
      drivingMs: sum("drivingMs"),
      mistakes: sum("mistakes"),
      clean: sum("clean"),
      timed: sum("timed"),
      days,
    },
    targets: known
      .flatMap((combo) => targetsOf(combo, monday, sunday))
      .toSorted((a, b) => nearestFirst(a.target, b.target)),
    main: main && mainOf(main.combo, monday, sunday, preferences),
  };
}

/** Whether a session has a line of its own to stand in: guests' laps are counted beside the others. */
function isShown(digest: SessionDigest): boolean {
  return isDrivenSession(digest) || digest.guestLaps > 0;
}

interface Known extends WeekCombo {
  readonly standing: ComboStanding;
  /** The sessions of its page up to the Sunday, in time order. */
  readonly page: readonly SessionDigest[];
  /** The day it is known on. */
  readonly today: CalendarDate;
}

/** What was known of a combo at the end of a week, on the Sunday or a day before it. */
function asOf(combo: WeekCombo, sunday: CalendarDate, today: CalendarDate): Known {
  const known = { ...knownOn(combo, sunday), today };
  const standing = comboStanding(known);
  const page = onPage(standing.page, known.digests).toSorted((a, b) => a.startedAt - b.startedAt);
  return { ...combo, ...known, standing, page };
}

/** A combo as it was known on a day: no later session, no page turned after its last one, no target set or changed since. */
function knownOn(combo: WeekCombo, day: CalendarDate): ComboQuestion {
  const digests = combo.digests.filter(({ date }) => date <= day);
  const lastAt = digests.reduce((last, { startedAt }) => Math.max(last, startedAt), Number.NEGATIVE_INFINITY);
  return {
    comboId: combo.comboId,
    digests,
    pages: combo.pages.filter(({ from }) => from <= lastAt),
    targets: combo.targets.filter(({ setOn }) => setOn <= day).map((target) => targetOnDay(target, day)),
    today: day,
  };
}

function lineOf({ comboId, digests, page, standing, today }: Known, monday: CalendarDate): WeekLine {
  const own = digests.filter(({ date }) => date >= monday);
  const sum = (field: "guestLaps" | "drivingMs" | "mistakes" | "clean" | "timed") =>
    own.reduce((all, digest) => all + digest[field], 0);
  const before = page.filter(({ date }) => date < monday);
  return {
    comboId,
    sessions: own.filter(isDrivenSession).length,
    laps: lapsOf(own),
    guestLaps: sum("guestLaps"),
    drivingMs: sum("drivingMs"),
    mistakes: sum("mistakes"),
    clean: sum("clean"),
    timed: sum("timed"),
    days: lapsByDay(own, monday),
    bestBefore: datedBests(before).at(-1),
    best: datedBests(page).at(-1),
    usualBefore: latestUsual(before),
    usual: latestUsual(page.filter(({ date }) => date >= monday)),
    lately: levelGain(standing.history, { from: addDays(today, 1 - LATELY_DAYS) }),
  };
}

function lapsByDay(digests: readonly SessionDigest[], monday: CalendarDate): number[] {
  return Array.from({ length: 7 }, (_, day) => {
    const date = addDays(monday, day);
    return lapsOf(digests.filter((digest) => digest.date === date));
  });
}

function lapsOf(digests: readonly SessionDigest[]): number {
  return addCounts(digests.map(({ counts }) => counts)).driven;
}

function targetsOf({ standing }: Known, monday: CalendarDate, sunday: CalendarDate): WeekTarget[] {
  const days = { from: monday, to: sunday, at: Date.parse(monday) };
  return standing.targets
    .filter(({ target }) => isInForce(target, standing.page, days))
    .map((state) => {
      const isNewlyReached = state.standing.kind === "reached" && state.standing.on >= monday;
      return { ...state, isNewlyReached };
    });
}

function mainOf(combo: Known, monday: CalendarDate, sunday: CalendarDate, preferences: Choices): WeekMain {
  const curve = pageCurve({ ...combo, driven: combo.digests });
  const reviewSince = (from: CalendarDate) =>
    comboReview({ ...combo, curve, period: { from, to: sunday }, preferences });
  const [week, season] = [reviewSince(monday), reviewSince(seasonBegins(combo.today))];
  return {
    comboId: combo.comboId,
    week,
    season,
    workOn: workOn(week.account, week.sectors),
    seasonWorkOn: workOn(season.account, season.sectors),
  };
}
