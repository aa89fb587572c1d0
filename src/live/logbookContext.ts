import { createContext, useContext, useSyncExternalStore } from "react";
import type { LogbookStatus } from "#db";
import { type CalendarDate, endOfTomorrow, type Preferences, practiceDay } from "#domain";
import type { Ask } from "./ask.ts";
import { eachMinute } from "./eachMinute.ts";
import type { SendOut } from "./errands/sending.ts";
import type { Opened, Surroundings } from "./openAtStart.ts";

/** The logbook that is open now, and the shelf it stands on. */
export interface OpenLogbook extends Opened {
  readonly surroundings: Surroundings;
  readonly ask: Ask;
  readonly sendOut: SendOut;
  /** Opens another logbook of the shelf; the page then shows that one. */
  readonly openOther: (name: string) => void;
}

export const LogbookContext = createContext<OpenLogbook | undefined>(undefined);

/** The logbook that is open now. */
export function useLogbook(): OpenLogbook {
  const open = useContext(LogbookContext);
  if (open === undefined) throw new Error("A part was drawn outside an open logbook.");
  return open;
}

/** How it stands with the open logbook, followed as it changes. */
export function useStatus(): LogbookStatus {
  const { book } = useLogbook();
  return useSyncExternalStore(book.status.subscribe, book.status.get);
}

/** Today as a practice day, by the driver's own beginning of a day; looked at again every minute. */
export function useToday({ dayStartsAt }: Pick<Preferences, "dayStartsAt">): CalendarDate {
  const { clock, zone } = useLogbook().surroundings;
  return useSyncExternalStore(eachMinute, () => practiceDay(clock(), zone(), dayStartsAt));
}

/**
 * The instant (epoch ms) from which on a session is dated after tomorrow, so that it is not the last one, nor stands
 * first; looked at again every minute, another one once a day.
 */
export function useUntil(): number {
  const { clock, zone } = useLogbook().surroundings;
  return useSyncExternalStore(eachMinute, () => endOfTomorrow(practiceDay(clock(), zone(), 0)));
}
