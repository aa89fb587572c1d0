import type { CalendarDate, Id } from "#domain";
import type { BestCandidate } from "./bestCandidates.ts";

/** One step of the personal-best line with the day it was driven. */
export interface DatedBest extends BestCandidate {
  readonly sessionId: Id;
  readonly date: CalendarDate;
}
