import { type AssumedPractice, sayDate } from "#domain";
import type { PracticeRate } from "#stats";
import { asSentence, counted } from "./counted.ts";

/** Sessions a week as they are told: to tenths. */
export function saySessionsAWeek({ sessionsAWeek }: Pick<PracticeRate, "sessionsAWeek">): string {
  return sessionsAWeek.toFixed(1);
}

/** Timed laps a session as they are told: whole. */
export function sayLapsASession({ lapsASession }: Pick<PracticeRate, "lapsASession">): string {
  return String(Math.round(lapsASession));
}

/** The time that the practice of lately is counted over. */
function sayLately({ since }: Pick<PracticeRate, "since">): string {
  return since === undefined ? "in the last six weeks" : `since ${sayDate(since)}`;
}

/**
 * Practice as it was lately.
 * @example "as in the last six weeks"; of a driver who began within them "as driven since Thu 5 Nov 2026"
 */
export function sayAsLately(rate: Pick<PracticeRate, "since">): string {
  return `as ${rate.since === undefined ? "" : "driven "}${sayLately(rate)}`;
}

/**
 * Where the practice that chances count on comes from.
 * @param lately undefined where nothing was driven in the last six weeks
 * @example "Your own figures. In the last six weeks it was 1.8 a week of 21 timed laps."
 */
export function sayCountedPractice(lately: PracticeRate | undefined, assumed: AssumedPractice = {}): string {
  const isAssumed = assumed.sessionsAWeek !== undefined || assumed.lapsASession !== undefined;
  if (lately === undefined)
    return isAssumed
      ? "Your own figures: nothing was driven in the last six weeks."
      : "Nothing was driven in the last six weeks. Type what you mean to drive, and chances are told.";
  if (!isAssumed)
    return `${asSentence(sayAsLately(lately))}. Type what you mean to drive, and the chances follow.`;
  const laps = counted(Math.round(lately.lapsASession), "timed lap");
  return `Your own figures. ${asSentence(sayLately(lately))} it was ${saySessionsAWeek(lately)} a week of ${laps}.`;
}
