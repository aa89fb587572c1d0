import type { RemarkKind } from "./remarks.ts";
import type { CalendarDate, Focus } from "./rows.ts";

/** What is looked for in the ledger; what is absent is not asked for, and all that is asked for must hold. */
export interface SearchTerms {
  /** Each word must stand in a note, the conditions or the names, in any of its forms; case and accents do not matter. */
  readonly words?: string;
  readonly remark?: RemarkKind;
  readonly focus?: Focus;
  /** A part of what was written for the tyres. */
  readonly tyres?: string;
  /** First and last practice day. */
  readonly from?: CalendarDate;
  readonly to?: CalendarDate;
  /** Shortest and longest lap time, ms. */
  readonly shortest?: number;
  readonly longest?: number;
}

/** Whether laps are asked for by what only a lap has: then a session is found by its laps alone. */
export function asksForLaps({ remark, shortest, longest }: SearchTerms): boolean {
  return remark !== undefined || shortest !== undefined || longest !== undefined;
}

/** Whether nothing is asked for. */
export function isEmptySearch(terms: SearchTerms): boolean {
  return Object.values(terms).every((value) => value === undefined);
}
