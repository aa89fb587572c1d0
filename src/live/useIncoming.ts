import {
  createLogbook,
  deleteDatabase,
  LedgerFault,
  newLogbookName,
  noteUnlisted,
  replaceLogbook,
} from "#db";
import { forgetMarker } from "#state/device.ts";
import { useNotices } from "#state/notices.ts";
import { useUndo } from "#state/undo.ts";
import { enterOrDelete } from "./enterOrDelete.ts";
import { useLogbook } from "./logbookContext.ts";
import { mergeDeed } from "./mergeDeed.ts";
import { type Errands, useErrand } from "./useErrand.ts";

/** The three ways of a file into this browser, each whole or not at all. False when it failed or was stopped. */
export interface Incoming extends Pick<Errands, "progress" | "stop"> {
  /**
   * Stores it as a logbook of its own and opens that. The one open before is left alone.
   * @param title without it, the one in the file
   */
  readonly asNew: (
    source: Blob,
    as: { readonly title?: string; readonly kind: "own" | "demo" },
  ) => Promise<boolean>;
  /**
   * Merges it into the open logbook; one undo takes it back. Once the driver has confirmed the date, stamps ahead of
   * this device's clock are put right.
   */
  readonly merge: (source: Blob, from: string, isDateConfirmed: boolean) => Promise<boolean>;
  /** Puts it in the place of the open logbook, which is kept on the shelf before. */
  readonly replace: (source: Blob) => Promise<boolean>;
}

/**
 * What can be done with a file that has been looked at.
 * @param how as for `useErrand`
 */
export function useIncoming(how: Parameters<typeof useErrand>[0] = {}): Incoming {
  const { progress, send, stop } = useErrand(how);
  const { shelf, book, entry, sendOut, openOther } = useLogbook();
  const say = useNotices((notices) => notices.say);
  const push = useUndo((list) => list.push);

  const told = async (work: () => Promise<void>) => {
    try {
      await work();
      return true;
    } catch (error) {
      if (!(error instanceof LedgerFault)) throw error;
      say({ kind: "fault", text: error.message, actions: [] });
      return false;
    }
  };

  const stored = async (source: Blob, enter: (name: string, titleInFile: string) => Promise<void>) => {
    const name = newLogbookName(shelf);
    if (!(await told(() => noteUnlisted(shelf, name)))) return false;
    const restored = await send("restore", { source, name });
    if (restored === undefined) return false;
    return told(() => enterOrDelete(name, () => enter(name, restored.title)));
  };

  const asNew: Incoming["asNew"] = (source, { title: own, kind }) =>
    stored(source, async (name, titleInFile) => {
      const title = own ?? titleInFile;
      await createLogbook(shelf, { title, kind, name });
      openOther(name);
      // The bar says of the demo what it is, for as long as it is open.
      const text = `“${title}” is open. Your other logbooks are on Data.`;
      if (kind === "own") say({ kind: "done", text, actions: [] });
    });

  const merge: Incoming["merge"] = async (source, from, isDateConfirmed) => {
    const done = await send("merge", { source, from, title: entry.title, isDateConfirmed });
    if (done === undefined) return false;
    if (done.rows === 0) {
      say({ kind: "done", text: "Nothing to merge: all of it is here already.", actions: [] });
      return true;
    }
    const deed = mergeDeed({ sendOut, logbook: book.name, source, done });
    push(deed);
    const undo = { name: "Undo", run: () => void useUndo.getState().undo(deed) };
    say({ kind: "done", text: `${done.what}. ${rowsInWords(done.rows)}.`, actions: [undo] });
    return true;
  };

  const replace: Incoming["replace"] = async (source) => {
    const kept = await send("keep", { title: entry.title, why: "replace" });
    if (kept === undefined) return false;
    const isIn = await stored(source, async (name) => {
      await replaceLogbook(shelf, book.name, name);
      openOther(name);
    });
    if (!isIn) return false;
    forgetMarker(book.name);
    const text = `“${entry.title}” is replaced. As it was before, it is kept under “Earlier states” for thirty days of use.`;
    say({ kind: "done", text, actions: [] });
    return told(() => deleteDatabase(book.name));
  };
  return { progress, stop, asNew, merge, replace };
}

const rowsInWords = (rows: number) =>
  rows === 1 ? "One row added or changed" : `${rows} rows added or changed`;
