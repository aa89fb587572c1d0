import { type CalendarDate, type Figure, known, unknown } from "#domain";
import { lapsForMedian } from "../pace/lapsForMedian.ts";
import { type PageSession, pageEvents } from "../period/pageHistory.ts";
import type { Band } from "../weeks/bands.ts";
import { type ChangeOfLevel, changeOfLevel } from "./changeOfLevel.ts";
import { levelCurve } from "./levelCurve.ts";
import { levelModel, SESSIONS_TO_KNOW } from "./levelModel.ts";

/** How far the level has moved over some days, ms, below 0 faster, with its 90 % interval. */
export interface LevelGain extends ChangeOfLevel {
  /** The first and the last session it is between. */
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** Sessions with a median in those days. */
  readonly sessions: number;
}

/** Days a gain is asked for, both counted; absent means open. */
export interface GainDays {
  readonly from?: CalendarDate | undefined;
  readonly to?: CalendarDate | undefined;
}

/** The level at a session, ms, with its 90 % band. */
export interface LevelPoint extends Pick<Band, "low" | "mid" | "high"> {
  readonly date: CalendarDate;
}

/** What one pass of the model says of some days. */
export interface LevelOver {
  readonly gain: LevelGain;
  /** The level at each session of those days that the model holds; worked out when it is asked for. */
  readonly line: () => readonly LevelPoint[];
}

const LEAST_SESSIONS = 2;

/**
 * How far the level has moved over some days, and its line through them, out of one pass. Rests on all sessions of the page
 * up to the last day, not only on those within. Our methods, §5.
 * @param history sessions of one page with a median, oldest first
 * @returns a reason with fewer than four of them in all, or fewer than two in the days
 */
export function levelOver(
  history: readonly PageSession[],
  { from = "", to = "9999-12-31" }: GainDays,
): Figure<LevelOver> {
  const sessions = history.filter(({ date }) => date <= to);
  const since = sessions.findIndex(({ date }) => date >= from);
  const within = since < 0 ? 0 : sessions.length - since;
  const [first, last] = [sessions[since], sessions.at(-1)];
  if (sessions.length < SESSIONS_TO_KNOW)
    return unknown({ needs: SESSIONS_TO_KNOW, of: "session", each: lapsForMedian, has: sessions.length });
  if (within < LEAST_SESSIONS || first === undefined || last === undefined)
    return unknown({ needs: LEAST_SESSIONS, of: "session", each: lapsForMedian, has: within });
  const model = levelModel({ sessions, events: pageEvents(sessions, last.date) });
  if (!model.known) return model;
  const held = model.value.posterior.series.from;
  return known({
    gain: { ...changeOfLevel(model.value, since), from: first.date, to: last.date, sessions: within },
    line: () =>
      levelCurve(model.value).flatMap(({ low, mid, high }, index) => {
        const date = sessions[held + index]?.date;
        return date === undefined || date < from ? [] : [{ date, low, mid, high }];
      }),
  });
}
