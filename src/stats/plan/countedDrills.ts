import type { CalendarDate, Figure } from "#domain";
import type { DrivenSession, MistakesAtCorner } from "../corners/mistakesAtCorners.ts";
import { mistakesAtCorners } from "../corners/mistakesAtCorners.ts";
import type { Choices } from "../laps/choices.ts";
import { levelGain } from "../level/levelGain.ts";
import type { LevelGain } from "../level/levelOver.ts";
import type { PageSession } from "../period/pageHistory.ts";
import { type DrillWeeks, drillWeeks } from "./drillWeeks.ts";

/** Whether a corner's remarks and the lap times went the way its drills did. */
export interface DrillsFollowed {
  /** The day a drill was counted there first. */
  readonly from: CalendarDate;
  /** Mistakes there in the evenings before that day, and in those after it. */
  readonly before: MistakesAtCorner;
  readonly since: MistakesAtCorner;
  /** How far the level has moved since. */
  readonly level: Figure<LevelGain>;
}

/** Drills as they were counted, and what followed. */
export interface CountedDrills {
  /** Of the corner asked for, or all; the ones counted last first. */
  readonly drills: readonly DrillWeeks[];
  /** Only where a corner was asked for and a drill was counted there. */
  readonly followed: DrillsFollowed | undefined;
}

/** What the drills of a combo are told from. */
export interface DrillsInput {
  /** Sessions of the present page with their runs, in any order; drills are counted from a day on, mistakes in all of them. */
  readonly sessions: readonly DrivenSession[];
  readonly since: CalendarDate;
  /** Sessions of the page with a median, oldest first. */
  readonly history: readonly PageSession[];
  readonly preferences: Choices;
  /** Only drills of this corner; absent: all. */
  readonly corner?: number | undefined;
}

/**
 * The drills that were counted, week by week (`drillWeeks`), and for one corner whether its mistakes got fewer and the level
 * moved since: runs of drills, in which mistakes are part of the task, and the evening of the first count are on neither side.
 */
export function countedDrills(input: DrillsInput): CountedDrills {
  const { sessions, since, history, preferences, corner } = input;
  const counting = sessions.filter(({ session }) => session.date >= since);
  const days = counting.map(({ session, runs }) => ({
    date: session.date,
    counts: runs
      .filter(({ guest }) => guest === undefined)
      .flatMap(({ counts = [] }) => counts)
      .filter((count) => count.tries > 0 && (corner === undefined || count.corner === corner)),
  }));
  const drills = drillWeeks(days);
  const [from] = days.flatMap(({ date, counts }) => (counts.length > 0 ? [date] : [])).sort();
  if (corner === undefined || from === undefined) return { drills, followed: undefined };
  const mistakes = (isMeant: (date: CalendarDate) => boolean) =>
    mistakesAtCorners(
      sessions
        .filter(({ session }) => isMeant(session.date))
        .map(({ session, runs }) => ({ session, runs: runs.filter(({ kind }) => kind !== "drill") })),
      preferences,
    ).at(corner);
  return {
    drills,
    followed: {
      from,
      before: mistakes((date) => date < from),
      since: mistakes((date) => date > from),
      level: levelGain(history, { from }),
    },
  };
}
