import { useEffect } from "react";
import { LedgerFault } from "#db";
import { useNotices } from "#state/notices.ts";
import { keepForecastsDue } from "./keepForecastsDue.ts";
import { useLogbook } from "./logbookContext.ts";
import { useRows } from "./useRows.ts";

/**
 * Keeps the app's forecasts, and scores them, whenever no session is open: on coming here, and once a session has ended. The
 * demo keeps those it came with.
 * @param restMs how long the page rests before
 */
export function useForecastsKept(restMs: number): void {
  const { book, ask, surroundings, entry } = useLogbook();
  const say = useNotices((notices) => notices.say);
  const open = useRows((from) => from.digests.orderBy("openSince").count(), []);
  const isResting = open === 0 && entry.kind === "own";
  useEffect(() => {
    if (!isResting) return;
    const clock = setTimeout(() => {
      if (book.status.get().kind !== "ok") return;
      keepForecastsDue({ book, ask, surroundings }).catch((fault: unknown) => {
        // Where nothing can be done any more the page says so by itself.
        if (book.status.get().kind !== "ok") return;
        if (!(fault instanceof LedgerFault)) throw fault;
        say({ kind: "fault", text: fault.message, actions: [] });
      });
    }, restMs);
    return () => clearTimeout(clock);
  }, [isResting, restMs, book, ask, surroundings, say]);
}
