import { type AskedFigure, type CalendarDate, daysBetween, isTimeKind, sayDate, type Target } from "#domain";
import { hundredths } from "./amount.ts";
import { sayTarget, sayTargetValue, targetFigure } from "./targets.ts";
import { sayLevel } from "./usualLap.ts";

type Draft = AskedFigure & Pick<Target, "value" | "by">;

/** What is known of the combo when a target is set; figures in the target's unit, absent where not known. */
export interface KnownAtSetting {
  readonly today: CalendarDate;
  /** The target's own figure now: for a best-lap target the PB. */
  readonly now?: number | undefined;
  /** PB of the page, ms. */
  readonly best?: number | undefined;
  /** Fastest and slowest of the sessions' best laps, ms. */
  readonly sessionBests?: { readonly low: number; readonly high: number } | undefined;
  /** What may be set without a question, ms, where a forecast is made: a time at it or above raises no question but its own. */
  readonly hardest?: number | undefined;
  /** Other targets of the combo that are still wanted. */
  readonly others?: readonly Draft[] | undefined;
  /** Whether a harder one is known to have fewer than 1 chance in 20 within a year. */
  readonly isByYear?: boolean | undefined;
}

/** A step under the best that is asked about though the sessions' bests lie closer together: share of the best. */
const LEAST_STEP = 0.01;
/** The same where no range of bests is known. Both are our own choice. */
const STEP_WITHOUT_RANGE = 0.05;

/** Days ahead from which a date may be a slip of the year: two years, twice as far as a forecast looks. Our own choice. */
const FAR_AHEAD = 730;

/**
 * Questions about a target that may be a slip: a date gone by or years ahead, one that stands there already, a figure
 * reached already, one out of reach of all that was driven, one with fewer than 1 chance in 20 within a year. A question is never a refusal.
 * @returns none for a target that raises no question
 * @example "1:20.000 is 3.70 s faster than your PB, and your sessions' bests lie within 1.20 s of each other: is it meant?"
 */
export function questionTarget(target: Draft, known: KnownAtSetting): readonly string[] {
  const { value } = target;
  const reached = known.now !== undefined && isAtLeastAsGood(target, known.now);
  return [
    questionDate(target.by, known.today),
    questionSecond(target, known.others),
    reached
      ? `Your ${targetFigure(target)} is ${target.kind === "median" ? sayLevel(known.now) : sayTargetValue(target.kind, known.now)} already: is ${sayTargetValue(target.kind, value)} meant?`
      : isAllowed(target, known)
        ? undefined
        : (outOfReach(target, known) ?? fasterThanBest(target, known) ?? farUnder(target, known)),
    target.kind === "cleanShare" && value >= 1000 && !reached
      ? "Every lap clean: one mistake misses it. Is it meant?"
      : undefined,
  ].filter((question) => question !== undefined);
}

function questionDate(by: CalendarDate | undefined, today: CalendarDate): string | undefined {
  if (by === undefined) return undefined;
  if (by < today) return `${sayDate(by)} has passed: which date is meant?`;
  return daysBetween(today, by) > FAR_AHEAD
    ? `${sayDate(by)} is more than two years ahead: is it meant?`
    : undefined;
}

function questionSecond(target: Draft, others: readonly Draft[] = []): string | undefined {
  const same = others.find(
    ({ kind, laps, value }) => kind === target.kind && laps === target.laps && value === target.value,
  );
  return same && `${sayTarget(same)} is a target of yours already: is a second one meant?`;
}

function isAtLeastAsGood({ kind, value }: Draft, now: number): boolean {
  return kind === "cleanShare" ? now >= value : now <= value;
}

/** Whether the forecast calls a time worth setting. */
function isAllowed(target: Draft, { hardest }: KnownAtSetting): boolean {
  return hardest !== undefined && isTimeKind(target.kind) && target.value >= hardest;
}

function outOfReach(target: Draft, known: KnownAtSetting): string | undefined {
  if (known.isByYear !== true || !isTimeKind(target.kind) || isAllowed(target, known)) return undefined;
  return `${sayTargetValue(target.kind, target.value)} has fewer than 1 chance in 20 within a year: is it meant?`;
}

function fasterThanBest(target: Draft, { best }: KnownAtSetting): string | undefined {
  if (target.kind === "best" || !isTimeKind(target.kind) || best === undefined || target.value >= best)
    return undefined;
  return `A ${targetFigure(target)} of ${sayTargetValue(target.kind, target.value)} is faster than your PB of ${sayTargetValue("best", best)}: is it meant?`;
}

function farUnder(target: Draft, { now, sessionBests }: KnownAtSetting): string | undefined {
  const { kind, value } = target;
  if (now === undefined) return undefined;
  if (kind === "scatter")
    return value * 2 < now
      ? `That is under half of your scatter of ${sayTargetValue(kind, now)}: is it meant?`
      : undefined;
  if (!isTimeKind(target.kind)) return undefined;
  const under = now - value;
  const than = kind === "best" ? "your PB" : `your ${targetFigure(target)} now`;
  const start = `${sayTargetValue(kind, value)} is ${hundredths.say(under)} faster than ${than}`;
  if (kind !== "best" || sessionBests === undefined)
    return under > now * STEP_WITHOUT_RANGE ? `${start}: is it meant?` : undefined;
  const range = sessionBests.high - sessionBests.low;
  if (under <= Math.max(range, now * LEAST_STEP)) return undefined;
  return `${start}, and your sessions' bests lie within ${hundredths.say(range)} of each other: is it meant?`;
}
