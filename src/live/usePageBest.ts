import { useRef } from "react";
import type { Span } from "#db";
import type { Id, Preferences } from "#domain";
import type { BestCandidate } from "#stats";
import { digestMaker } from "./digestMaker.ts";
import { pageBest } from "./pageBest.ts";
import { useRows } from "./useRows.ts";

/**
 * Best lap of a combo in a span of its history, leaving one session out; null when there is none, undefined until it
 * has been read.
 * @param isAfterBest the page has a best from before the span
 */
export function usePageBest(
  comboId: Id,
  span: Span,
  except: Id | undefined,
  preferences: Preferences,
  isAfterBest = false,
): BestCandidate | null | undefined {
  const { from, to } = span;
  const maker = digestMaker(preferences);
  const read = useRows(
    async (book) => {
      const asked = { comboId, span: { from, to }, isAfterBest, ...(except !== undefined && { except }) };
      return (await pageBest(book, asked, maker)) ?? null;
    },
    [comboId, from, to, except, isAfterBest, maker.methodVersion],
  );
  // Read again and found the same: whoever works from it must not work anew.
  const last = useRef(read);
  const isSame = read?.lapId === last.current?.lapId && read?.ms === last.current?.ms;
  if (!isSame || read === undefined || read === null) last.current = read;
  return last.current;
}
