import { inOrder, isOnPage, type PageSpan, type Standing, standingOf } from "#combo";
import type { CalendarDate, Figure, Target } from "#domain";
import { sessionBests } from "../bests/sessionBests.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { LevelKnown } from "../level/levelKnown.ts";
import type { PageSession } from "../period/pageHistory.ts";
import { type TargetProgress, targetProgress } from "../targets/targetProgress.ts";
import { atMost, figureForTarget, levelFigure, type TargetFigure } from "./figureForTarget.ts";
import { type SessionFigure, sessionFigures } from "./sessionFigures.ts";
import { targetPoints } from "./targetPoints.ts";

/** How it stands with one target on a day; figures in the target's unit. */
export interface TargetState {
  readonly target: Target;
  readonly standing: Standing;
  /** The figure that stands against it. */
  readonly now: TargetFigure | undefined;
  /** Of a missed one: the nearest that a session, or the level after one, came from its setting to its date. */
  readonly closest: TargetFigure | undefined;
  readonly progress: Figure<TargetProgress>;
}

/** What targets are judged by on a day. */
export interface TargetsQuestion {
  /** Targets of the combo, without deleted ones, archived ones among them. */
  readonly targets: readonly Target[];
  /** The page the combo stands on that day, and its sessions up to it in time order. */
  readonly page: PageSpan;
  readonly digests: readonly SessionDigest[];
  /** Those of them with a median, from `pageHistory`. */
  readonly history: readonly PageSession[];
  /** The level after each of them. */
  readonly level: LevelKnown;
  readonly today: CalendarDate;
}

/**
 * Where the targets of a combo stand on a day, in the order a driver looks for: the one function that says so. Our methods,
 * §6; what counts as reached is said by `standingOf`.
 */
export function targetStates(question: TargetsQuestion): TargetState[] {
  const { targets, page, digests, history, level, today } = question;
  const levelNow = () => level.after(history.length - 1)?.mid;
  return inOrder(targets, page, today).map((target) => {
    const isOfPage = isOnPage(page, target.setAt);
    const now = isOfPage ? figureForTarget(target, digests, levelNow) : undefined;
    const points = isOfPage ? targetPoints(target, { page: digests, history, level }) : [];
    const standing = standingOf(target, points, page, today);
    return {
      target,
      standing,
      now,
      closest: standing.kind === "missed" ? closestTo(target, question) : undefined,
      progress: targetProgress(target.value, now && atMost(now), target.start),
    };
  });
}

/**
 * The target to come next: in force, not reached; the nearest date first, without a date last.
 * @param states from `targetStates`, in its order
 */
export function nextTarget(states: readonly TargetState[]): Target | undefined {
  return states.find(({ target, standing }) => target.archivedAt === undefined && standing.kind === "open")
    ?.target;
}

/** What is left from a figure to a lap time that is wanted, whole ms: of a time cut short the most it may be. */
export function toGo(value: number, now: TargetFigure): number {
  return Math.round(atMost(now)) - value;
}

function closestTo(target: Target, { digests, history, level }: TargetsQuestion): TargetFigure | undefined {
  const { kind, setAt, setOn, by = setOn } = target;
  const isWithin = ({ startedAt, date }: Pick<SessionDigest, "startedAt" | "date">) =>
    startedAt >= setAt && date <= by;
  switch (kind) {
    case "best":
      return nearest(sessionBests(digests.filter(isWithin)).map(bestFigure));
    case "median":
      return nearest(
        history.flatMap((session, index) => {
          const mid = isWithin(session) ? level.after(index)?.mid : undefined;
          return mid === undefined ? [] : [levelFigure(mid)];
        }),
      );
    case "meanOf":
    case "scatter":
      return nearest(sessionFigures(target, digests.filter(isWithin)).map(figureOnly));
    case "cleanShare":
      return nearest(sessionFigures(target, digests.filter(isWithin)).map(figureOnly), -1);
  }
}

/** @param sign of what is better: less, or with -1 more */
function nearest(figures: readonly TargetFigure[], sign = 1): TargetFigure | undefined {
  return figures.toSorted((a, b) => sign * (atMost(a) - atMost(b)))[0];
}

function figureOnly({ value, decimals }: SessionFigure): TargetFigure {
  return { value, decimals };
}

function bestFigure({ ms, decimals }: { readonly ms: number; readonly decimals: number }): TargetFigure {
  return { value: ms, decimals };
}
