import { useCallback, useEffect, useRef, useState } from "react";
import { LedgerFault } from "#db";
import { useNotices } from "#state/notices.ts";
import type { Progress } from "./errands/errand.ts";
import type { ErrandDetails, ErrandName, ErrandResult } from "./errands/errands.ts";
import { useLogbook } from "./logbookContext.ts";
import { sayNeededSpace } from "./sayNeededSpace.ts";

/** One errand at a time, with its progress. */
export interface Errands {
  /** How far it is, while one is under way. */
  readonly progress: Progress | undefined;
  /** Undefined when it was stopped or failed, which the driver has then been told. */
  readonly send: <E extends ErrandName>(
    errand: E,
    details: ErrandDetails<E>,
  ) => Promise<ErrandResult<E> | undefined>;
  readonly stop: () => void;
}

/**
 * Sends out errands on the open logbook. One under way is stopped when the part that sent it leaves the page.
 * @param goesOn it is not: whoever presses a button and looks elsewhere meanwhile still wants it done
 */
export function useErrand({ goesOn = false }: { readonly goesOn?: boolean } = {}): Errands {
  const { book, sendOut } = useLogbook();
  const say = useNotices((notices) => notices.say);
  const [progress, setProgress] = useState<Progress>();
  const stopping = useRef<AbortController>(undefined);
  const stop = useCallback(() => stopping.current?.abort(), []);
  useEffect(() => (goesOn ? undefined : stop), [stop, goesOn]);

  const send: Errands["send"] = useCallback(
    async (errand, details) => {
      stop();
      const mine = new AbortController();
      stopping.current = mine;
      setProgress({ step: "Beginning" });
      const onProgress = (now: Progress) => {
        if (stopping.current === mine) setProgress(now);
      };
      try {
        return await sendOut(book.name, errand, details, { onProgress, signal: mine.signal });
      } catch (error) {
        if (!(error instanceof LedgerFault)) throw error;
        if (stopping.current === mine || error.code !== "cancelled") {
          const text = await sayNeededSpace(error, async () =>
            (await import("./neededBy.ts")).neededBy(details),
          );
          say({ kind: error.code === "cancelled" ? "done" : "fault", text, actions: [] });
        }
        return undefined;
      } finally {
        if (stopping.current === mine) setProgress(undefined);
      }
    },
    [book, sendOut, say, stop],
  );
  return { progress, send, stop };
}
