import type { SessionDigest } from "../digest/sessionDigest.ts";
import { type LevelKnown, levelKnown } from "../level/levelKnown.ts";
import { type PageSession, pageEvents, pageHistory } from "../period/pageHistory.ts";

/**
 * The level of a page as it was known after each of its sessions, with the breaks before it.
 * @param history sessions of the page with a median, oldest first
 */
export function pageLevel(history: readonly PageSession[]): LevelKnown {
  return levelKnown(history, (session) =>
    pageEvents(history.slice(0, session + 1), history[session]?.date ?? ""),
  );
}

/**
 * What the usual lap of a page is after its last session, ms.
 * @param page digests of the page, in any order
 * @param combo digests of the combo on all its pages, in any order; those of the page where not said
 * @returns undefined with fewer than two sessions of five pace laps
 */
export function levelOfPage(
  page: readonly SessionDigest[],
  combo?: readonly SessionDigest[],
): number | undefined {
  const history = pageHistory(page, combo);
  return pageLevel(history).after(history.length - 1)?.mid;
}
