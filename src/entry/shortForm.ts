import { formatLapTime, type Reading } from "#domain";
import { either, quoted, refuse, refuseUnclear } from "./refuse.ts";
import { wholeTime } from "./wholeTime.ts";
import type { ReadTime, TimeForm } from "./word.ts";

/** What a short form is completed from. */
export interface Completion {
  /** The usual lap: median of the session's pace laps, else the page's PB. */
  readonly nearMs?: number | undefined;
  /** Set with a remark that takes a lap far off, so that the tens of seconds must be typed: a mistake, an out or in lap. */
  readonly mustTypeTens?: boolean | undefined;
  /** Set while too few laps are known to say what is usual. */
  readonly isUsualUnsure?: boolean | undefined;
}

/** What was typed of a time. */
export interface TypedPart {
  readonly text: string;
  /** Under 10 s where the tens of seconds are left out, under 60 s where the minutes are. */
  readonly ms: number;
  readonly decimals: number;
  readonly leftOut: "tens" | "minutes";
}

/** The widest distance from the usual, of the ten seconds or the minute a short form repeats in. */
export const tensReachMs = 3_000;
const minutesReachMs = 20_000;

/**
 * Completes the last digits of a lap time to the time nearest to the usual one. Refused, with the candidates, when
 * the nearest lies more than 3 s (of 10) or 20 s (of 60) away. With a mistake, an out or an in lap the tens must be
 * typed, and a time under the usual by more than 3 s is refused as well: such a lap that seems that fast has lost a minute.
 */
export function completeShort(typed: TypedPart, completion: Completion): Reading<ReadTime> {
  const { text, decimals } = typed;
  const { nearMs, mustTypeTens = false, isUsualUnsure = false } = completion;
  if (nearMs === undefined) return refuseWithoutUsual(typed);
  const [below, above] = neighbours(typed, nearMs);
  const whole = (times: readonly number[]) => times.map((ms) => wholeTime(ms, decimals));
  if (typed.leftOut === "tens" && mustTypeTens)
    return refuseUnclear(
      text,
      "Such a lap may be tens of seconds longer.",
      whole(slowerTimes(below, nearMs)),
    );
  if (typed.leftOut === "tens" && isUsualUnsure)
    return refuseUnclear(
      text,
      "The tens of seconds are needed until three clean laps show what is usual.",
      whole([below, above]),
    );
  const ms = nearestTime(typed, nearMs);
  const over = typed.leftOut === "tens" ? tensReachMs : minutesReachMs;
  const under = mustTypeTens ? tensReachMs : over;
  if (ms - nearMs <= over && nearMs - ms <= under)
    return {
      ok: true,
      ms,
      decimals,
      ...(ms === typed.ms
        ? { form: formAsTyped(text) }
        : { form: "short", ...unclear(below, above, nearMs) }),
    };
  const times = whole([below, above]);
  return refuseUnclear(
    text,
    `${quoted(text)} could be ${either(times)}: neither is near enough to your usual ${formatLapTime(nearMs)}.`,
    times,
  );
}

/** How many readings a driver is shown of a lap that may have lost tens of seconds. */
const shownReadings = 3;

/** The first times ending as typed that such a lap can have: from 3 s under the usual up, ten seconds apart. */
function slowerTimes(below: number, nearMs: number): number[] {
  const first = nearMs - below <= tensReachMs ? below : below + 10_000;
  return Array.from({ length: shownReadings }, (_, more) => first + more * 10_000);
}

/** Another reading less than three times as far from the usual is nearly as near. */
const nearlyAsNear = 3;

function unclear(below: number, above: number, nearMs: number) {
  const [near, far] = [nearMs - below, above - nearMs].toSorted((a, b) => a - b) as [number, number];
  return far < nearlyAsNear * near && { isUnclear: true };
}

/** Where a lap is so short that nothing was left out, nothing was completed either. */
function formAsTyped(text: string): TimeForm {
  return /[.,]/.test(text) ? "full" : "digits";
}

/** The time ending as typed that is nearest to the usual one. */
export function nearestTime(typed: Pick<TypedPart, "ms" | "leftOut">, nearMs: number): number {
  const [below, above] = neighbours(typed, nearMs);
  return nearMs - below <= above - nearMs ? below : above;
}

/** The last time ending as typed that is not over the usual, and the first one after it. */
function neighbours(
  { ms, leftOut }: Pick<TypedPart, "ms" | "leftOut">,
  nearMs: number,
): readonly [number, number] {
  const period = leftOut === "tens" ? 10_000 : 60_000;
  const fewest = ms === 0 ? 1 : 0;
  const periods = Math.max(fewest, Math.floor((nearMs - ms) / period));
  return [periods * period + ms, (periods + 1) * period + ms];
}

function refuseWithoutUsual({ text, ms, decimals, leftOut }: TypedPart) {
  const example = wholeTime((leftOut === "tens" ? 80_000 : 60_000) + ms, decimals);
  return refuse(
    0,
    text.length,
    `There is no lap yet that ${quoted(text)} could be completed from.`,
    `Write the whole time, such as ${example}.`,
  );
}
