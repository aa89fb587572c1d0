import { fastestSession, type Span } from "#db";
import type { Id, Preferences } from "#domain";
import type { BestCandidate } from "#stats";
import { digestMaker } from "./digestMaker.ts";
import { useRows } from "./useRows.ts";

/**
 * Best lap of a combo in a span of its history, leaving one session out; null when there is none, undefined until it
 * has been read.
 */
export function usePageBest(
  comboId: Id,
  span: Span,
  except: Id | undefined,
  preferences: Preferences,
): BestCandidate | null | undefined {
  const { from, to } = span;
  const maker = digestMaker(preferences);
  return useRows(
    async (book) => {
      const asked = { comboId, span: { from, to }, ...(except !== undefined && { except }) };
      return (await fastestSession(book, asked, maker))?.digest.bestClean ?? null;
    },
    [comboId, from, to, except, maker.methodVersion],
  );
}
