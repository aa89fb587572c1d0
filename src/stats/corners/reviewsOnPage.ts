import { isOnPage, type PageSpan } from "#combo";
import type { CornerReview } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";

/**
 * The reviews of a page, the newest first. A review belongs to the page of its session; one without, or of a session that is
 * not there, to that of the last session up to its day, and before all sessions to the first page.
 * @param digests of the combo on all its pages, in any order
 */
export function reviewsOnPage(
  reviews: readonly CornerReview[],
  page: PageSpan,
  digests: readonly SessionDigest[],
): CornerReview[] {
  const driven = digests.toSorted((a, b) => a.startedAt - b.startedAt);
  const isOfPage = ({ sessionId, on }: CornerReview) => {
    const session =
      driven.find((digest) => digest.sessionId === sessionId) ?? driven.findLast(({ date }) => date <= on);
    return isOnPage(page, session?.startedAt ?? Number.NEGATIVE_INFINITY);
  };
  return reviews.filter(isOfPage).sort(newestFirst);
}

function newestFirst(a: CornerReview, b: CornerReview): number {
  if (a.on !== b.on) return a.on < b.on ? 1 : -1;
  return b.createdAt - a.createdAt || (a.id < b.id ? 1 : -1);
}
