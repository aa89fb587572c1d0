import { type CalendarDate, endOfTomorrow, type Page } from "#domain";

/** Part of a combo's history whose times compare: from an instant that counts to one that does not. */
export interface PageSpan {
  readonly from: number;
  readonly to: number;
  /** The row that turned it; absent for the first page. */
  readonly page?: Page;
}

/** All pages of a combo, oldest first; the first reaches back for ever, the last goes on for ever. */
export function pageSpans(pages: readonly Page[]): PageSpan[] {
  const turned = [...pages].sort((a, b) => a.from - b.from || (a.id < b.id ? -1 : 1));
  const first: PageSpan = { from: Number.NEGATIVE_INFINITY, to: turned[0]?.from ?? Number.POSITIVE_INFINITY };
  return [
    first,
    ...turned.map((page, index) => ({
      page,
      from: page.from,
      to: turned[index + 1]?.from ?? Number.POSITIVE_INFINITY,
    })),
  ];
}

/** Whether an instant belongs to a page. */
export function isOnPage({ from, to }: PageSpan, at: number): boolean {
  return from <= at && at < to;
}

/**
 * The page an instant belongs to: the latest that begins at it or before.
 * @param pages pages of one combo, in any order
 */
export function pageOf(pages: readonly Page[], at: number): PageSpan {
  const spans = pageSpans(pages);
  return spans.findLast((span) => isOnPage(span, at)) ?? (spans[0] as PageSpan);
}

/**
 * The page a combo stands on today: the latest that has begun. One that begins after tomorrow was turned under a wrong
 * clock, and would leave every session on an older page.
 * @param pages pages of one combo, in any order
 */
export function presentPage(pages: readonly Page[], today: CalendarDate): PageSpan {
  const end = endOfTomorrow(today);
  return pageSpans(pages.filter(({ from }) => from < end)).at(-1) as PageSpan;
}

/** The sessions of a page, as they were given. */
export function onPage<S extends { readonly startedAt: number }>(
  page: PageSpan,
  sessions: readonly S[],
): S[] {
  return sessions.filter(({ startedAt }) => isOnPage(page, startedAt));
}
