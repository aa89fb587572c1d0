import { useEffect } from "react";
import { isClosed, LedgerFault } from "#db";
import { type OpenLogbook, stampAhead, useLogbook } from "#live";
import { useNotices } from "#state/notices.ts";

/** Chores wait until the page has been drawn and the first laps can be typed. */
const restMs = 1500;

/** What can wait longest: it reads every run. */
const longRestMs = 60_000;

/**
 * What the app does by itself after opening: figures of sessions that were restored or merged are worked out, dates
 * after today are asked about, and what was deleted long ago, or left behind by a crash, is removed for good.
 */
export function useChores(): void {
  const open = useLogbook();
  const say = useNotices((notices) => notices.say);
  useEffect(() => {
    const { book, ask } = open;
    let isLeft = false;
    // Where nothing can be done any more the page says so by itself; of a logbook that was left nobody waits for it.
    const tell = (fault: Error, text: string) => {
      if (isLeft || book.status.get().kind !== "ok" || isClosed(fault)) return;
      say({ kind: "fault", text, actions: [] });
    };
    const freshen = setTimeout(() => {
      ask(book, "freshen", null).catch((fault: Error) =>
        tell(fault, `Figures of old sessions were not renewed: ${fault.message}`),
      );
    }, restMs);
    const ahead = setTimeout(() => {
      if (book.status.get().kind !== "ok") return;
      lookAhead(open).catch((fault: Error) => tell(fault, `Dates were not looked at: ${fault.message}`));
    }, restMs);
    const purge = setTimeout(() => {
      if (book.status.get().kind !== "ok") return;
      import("./removeForGood.ts")
        .then(({ removeForGood }) => removeForGood(open))
        .catch((fault: Error) =>
          tell(
            fault,
            fault instanceof LedgerFault
              ? fault.message
              : `What was deleted long ago was not removed: ${fault.message}`,
          ),
        );
    }, longRestMs);
    return () => {
      isLeft = true;
      clearTimeout(freshen);
      clearTimeout(ahead);
      clearTimeout(purge);
    };
  }, [open, say]);
}

/** The words and the way to put dates right are fetched only where there are some to put right. */
async function lookAhead(open: OpenLogbook): Promise<void> {
  const newest = await stampAhead(open.book, open.surroundings.clock());
  if (newest === undefined || newest === open.entry.toldAhead) return;
  const { tellDatesAhead } = await import("./tellDatesAhead.ts");
  await tellDatesAhead(open, newest);
}
