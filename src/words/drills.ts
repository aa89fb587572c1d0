import { type CalendarDate, sayShortDate } from "#domain";
import type { DrillsFollowed, DrillWeeks, MistakesAtCorner } from "#stats";
import { shareEnds } from "./cleanShare.ts";
import { lapTimesFollowed } from "./cornersSay.ts";
import { asSentence, counted } from "./counted.ts";
import { drillWords } from "./planLine.ts";

/**
 * How often the tries of a drill worked, over all the weeks it was counted in.
 * @example "14 of 20 exits without wheelspin: 70 %, between 51 and 84 %"
 */
export function drillTitle({ drill, all }: Pick<DrillWeeks, "drill" | "all">): string {
  const [low, high] = shareEnds(all);
  return `${all.good} of ${all.tries} ${drillWords[drill].good}: ${Math.round(all.share * 100)} %, between ${low} and ${high} %`;
}

/** Whether more worked in the last week than in the first; with one week only what it needs. */
export function drillReading({ weeks }: Pick<DrillWeeks, "weeks">): string {
  const [first, last] = [weeks[0], weeks.at(-1)];
  if (first === undefined || last === undefined || first === last)
    return "Whether more of them work cannot be told yet: it needs a second week.";
  const told = `${last.good} of ${last.tries} in the last week, ${first.good} of ${first.tries} in the first`;
  return `${asSentence(told)}: ${saySharesApart(last, first)}.`;
}

/** Laps on either side from which mistakes are compared. Common practice, no source. */
const LEAST_LAPS = 20;

/**
 * Whether the remarks of a corner and the lap times went the way its drills did.
 * @example ["Mistakes there in 5 of 60 laps before 3 Nov, in 1 of 55 since: may be chance.", "Lap times: usual lap likely faster by 0.20 s since 5 Nov."]
 */
export function drillsFollowedSay(
  { from, before, since, level }: DrillsFollowed,
  today: CalendarDate,
): readonly string[] {
  return [sayMistakesSince(before, since, sayShortDate(from, today)), sayTimesSince(level, today)];
}

/** That the level moved is no sign that a drill did it. */
function sayTimesSince(level: DrillsFollowed["level"], today: CalendarDate): string {
  const told = lapTimesFollowed({ level, to: today }, today);
  return level.known ? `${told} All you practised since is in it, not this alone.` : told;
}

function sayMistakesSince(before: MistakesAtCorner, since: MistakesAtCorner, day: string): string {
  if (
    before.share === undefined ||
    since.share === undefined ||
    Math.min(before.laps, since.laps) < LEAST_LAPS
  )
    return `Whether mistakes there got fewer cannot be told yet: it needs ${LEAST_LAPS} laps before ${day} and after it, besides drills; there are ${before.laps} and ${since.laps}.`;
  const told = `Mistakes there in ${before.mistakes} of ${counted(before.laps, "lap")} before ${day}, in ${since.mistakes} of ${since.laps} after it`;
  return `${told}: ${saySharesApart(since.share, before.share)}.`;
}

interface Ends {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** Where the 90 % intervals of two shares meet, the difference may be chance. */
function saySharesApart(now: Ends, before: Ends): string {
  if (now.low > before.high) return "very likely more";
  if (now.high < before.low) return "very likely fewer";
  return now.share === before.share ? "the same" : "the difference may be chance";
}
