import { onPage, type PageSpan, presentPage } from "#combo";
import type { CalendarDate, Id, Page, Target } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { type PageSession, pageHistory } from "../period/pageHistory.ts";
import { pageLevel } from "./pageLevel.ts";
import { type TargetState, targetStates } from "./targetStates.ts";

/** One combo with all that is said of it on a day. */
export interface ComboQuestion {
  readonly comboId: Id;
  /** Digests of the combo in any order, none of them later than the day. */
  readonly digests: readonly SessionDigest[];
  readonly pages: readonly Page[];
  /** Without deleted ones, archived ones among them. */
  readonly targets: readonly Target[];
  readonly today: CalendarDate;
}

/** What is true of a combo on a day: what more than one screen says of it. */
export interface ComboStanding {
  /** The page its times are compared on, and the sessions of it that have a median, oldest first. */
  readonly page: PageSpan;
  readonly history: readonly PageSession[];
  /** All targets as they stand, in the order a driver looks for. */
  readonly targets: readonly TargetState[];
}

/**
 * What is true of a combo on a day: its page and its targets. Review, the week, all combos and Targets take them from here,
 * so that one question has one answer.
 */
export function comboStanding({ digests, pages, targets, today }: ComboQuestion): ComboStanding {
  const page = presentPage(pages, today);
  const paged = onPage(page, digests).toSorted((a, b) => a.startedAt - b.startedAt);
  const history = pageHistory(paged, digests);
  const level = pageLevel(history);
  return { page, history, targets: targetStates({ targets, page, digests: paged, history, level, today }) };
}
