import { useState } from "react";
import { type Change, type Logbook, rigInForce, startSession } from "#db";
import {
  askDate,
  type CalendarDate,
  type Id,
  instantOf,
  isClockWrong,
  isDateAsked,
  type Preferences,
  practiceDay,
  sayClockWrong,
  sayDate,
} from "#domain";
import { useLogbook } from "#live";
import { goTo, parseAddress } from "#state/address.ts";
import type { ReadStart } from "./typedStart.ts";

const noon = 12;

/** How a session is started from Log, by its form as by one press. */
export interface Starting {
  /** Whether to go on; a date in doubt is asked about first, and kept when it is started once more. */
  readonly isAgreed: (date: CalendarDate | undefined) => boolean;
  /** What is asked about the date the session would have, as long as that stands. */
  readonly question: (date: CalendarDate | undefined) => string | undefined;
  readonly write: (
    book: Logbook,
    start: ReadStart,
  ) => Promise<Change & { readonly sessionId: Id; readonly runId: Id }>;
  /** Log goes on with what has been started, and back to its beginning when that is taken back. */
  readonly onStored: (change: { readonly sessionId: Id }) => void;
  readonly onTakenBack: () => void;
}

/** The date of a session that starts now or is entered afterwards, and whether it has to be asked about. */
export function useStarting({ dayStartsAt }: Pick<Preferences, "dayStartsAt">): Starting {
  const { surroundings } = useLogbook();
  /** The date after tomorrow, or of a clock that is wrong, that the driver was asked about. */
  const [asked, setAsked] = useState<CalendarDate>();
  const dayOf = (at: number) => practiceDay(at, surroundings.zone(), dayStartsAt);
  /** The date that has to be asked about. Without one of the driver's own it is the clock's. */
  const doubtOf = (date: CalendarDate | undefined) => {
    const now = surroundings.clock();
    if (date === undefined) return isClockWrong(now) ? dayOf(now) : undefined;
    return isDateAsked(date, dayOf(now), now) ? date : undefined;
  };
  return {
    isAgreed: (date) => {
      const doubted = doubtOf(date);
      if (doubted === undefined || doubted === asked) return true;
      setAsked(doubted);
      return false;
    },
    question: (date) => {
      const doubted = doubtOf(date);
      if (doubted === undefined || doubted !== asked) return undefined;
      return date === undefined
        ? `${sayClockWrong(doubted)} Set it right, or write the date under “Focus, target, conditions, another date”. Start the session once more to keep ${sayDate(doubted)}.`
        : `${askDate("session", doubted)} Start it once more to keep it.`;
    },
    write: async (book, { on, focus, targetMs, conditions, date, plan }) => {
      const zone = surroundings.zone();
      // The page may have stood open over the end of the day, or travelled.
      const today = dayOf(surroundings.clock());
      const isEarlier = date !== undefined && date !== today;
      const rig = await rigInForce(book, date ?? today);
      return startSession(book, {
        ...on,
        date: date ?? today,
        zone,
        focus,
        ...(isEarlier && { startedAt: instantOf(date, noon, zone), isTimeOfDayKnown: false }),
        ...(targetMs !== undefined && { targetMs }),
        ...(conditions !== undefined && { conditions }),
        ...(plan && { plan }),
        ...(rig && { run: { rigId: rig.id } }),
      });
    },
    onStored: ({ sessionId }) => goTo({ place: "log", sessionId }),
    onTakenBack: () => {
      if (parseAddress(window.location.hash).place === "log") goTo({ place: "log" }, "replace");
    },
  };
}
