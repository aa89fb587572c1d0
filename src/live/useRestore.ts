import { useRef, useState } from "react";
import { createLogbook, LedgerFault, newLogbookName, noteUnlisted, restoreAsNew } from "#db";
import type { AllRows } from "#domain";
import { useNotices } from "#state/notices.ts";
import { enterOrDelete } from "./enterOrDelete.ts";
import { useLogbook } from "./logbookContext.ts";
import { sayNeededSpace } from "./sayNeededSpace.ts";

/** Rows that have been checked, and the logbook they shall become. */
export interface Restorable {
  readonly title: string;
  readonly kind: "own" | "demo";
  readonly rows: AllRows;
}

export interface Restore {
  /** Rows stored so far and all there are, while it goes on. */
  readonly progress: { readonly done: number; readonly all: number } | undefined;
  /** False when it was cancelled or failed, which the driver has then been told. */
  readonly restore: (what: Restorable) => Promise<boolean>;
  readonly cancel: () => void;
}

/** Stores rows as a new logbook of the shelf, whole or not at all, and opens it. The one open before is left alone. */
export function useRestore(): Restore {
  const { shelf, surroundings, openOther } = useLogbook();
  const say = useNotices((notices) => notices.say);
  const [progress, setProgress] = useState<Restore["progress"]>();
  const stop = useRef<AbortController>(undefined);

  const restore = async ({ title, kind, rows }: Restorable) => {
    const name = newLogbookName(shelf);
    stop.current = new AbortController();
    setProgress({ done: 0, all: 1 });
    try {
      await noteUnlisted(shelf, name);
      const book = await restoreAsNew(rows, {
        ...surroundings,
        name,
        signal: stop.current.signal,
        onProgress: (done, all) => setProgress({ done, all }),
      });
      book.close();
      await enterOrDelete(name, () => createLogbook(shelf, { title, kind, name }));
      openOther(name);
      say({ kind: "done", text: `“${title}” is open. Your other logbooks are on Data.`, actions: [] });
      return true;
    } catch (error) {
      if (!(error instanceof LedgerFault)) throw error;
      const text = await sayNeededSpace(error, () => JSON.stringify(rows).length);
      say({ kind: error.code === "cancelled" ? "done" : "fault", text, actions: [] });
      return false;
    } finally {
      setProgress(undefined);
    }
  };
  return { progress, restore, cancel: () => stop.current?.abort() };
}
