import { useEffect } from "react";
import { isClosed, LedgerFault } from "#db";
import { useNotices } from "#state/notices.ts";
import { type OpenLogbook, useLogbook } from "./logbookContext.ts";
import { useRows } from "./useRows.ts";

/**
 * Does something whenever no session of a logbook of one's own is open: on coming here, and once a session has ended. A fault of
 * the book is said; where nothing can be done any more, the page says so by itself, and of a logbook that was left nobody waits.
 * @param restMs how long the page rests before
 * @param work the same one at each drawing
 */
export function useAtRest(restMs: number, work: (open: OpenLogbook) => Promise<void>): void {
  const logbook = useLogbook();
  const say = useNotices((notices) => notices.say);
  const open = useRows((from) => from.digests.orderBy("openSince").count(), []);
  const isResting = open === 0 && logbook.entry.kind === "own";
  useEffect(() => {
    if (!isResting) return;
    const isThere = () => logbook.book.status.get().kind === "ok";
    const clock = setTimeout(() => {
      if (!isThere()) return;
      work(logbook).catch((fault: unknown) => {
        if (!isThere() || isClosed(fault)) return;
        if (!(fault instanceof LedgerFault)) throw fault;
        say({ kind: "fault", text: fault.message, actions: [] });
      });
    }, restMs);
    return () => clearTimeout(clock);
  }, [isResting, restMs, work, logbook, say]);
}
