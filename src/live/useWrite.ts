import { useCallback } from "react";
import { type Change, LedgerFault, type Logbook, noteLaps, type Shelf, undoChange } from "#db";
import { useNotices } from "#state/notices.ts";
import { type Deed, useUndo } from "#state/undo.ts";
import { useLogbook } from "./logbookContext.ts";
import { newLaps } from "./newLaps.ts";
import { saveBackup } from "./saveBackup.ts";
import { sayNeededSpace } from "./sayNeededSpace.ts";

export interface WriteOptions {
  /** Offer to take it back in a notice; on the undo list it stands either way. */
  readonly isUndoOffered?: boolean;
  /** It stands on no undo list: what is shown then would be known all the same. */
  readonly isFinal?: true;
  /** Told once the driver has taken it back: where to go on from what is there no more. */
  readonly onTakenBack?: () => void;
  /** Told instead of a notice when the write failed, by whoever still holds the text. */
  readonly onFault?: (fault: LedgerFault) => void;
  /** Bytes that a large write stores, about, to be said when there is no space for them. */
  readonly bytes?: () => number;
}

/** Runs a named write; gives its change, or undefined when it failed, which the driver has then been told. */
export type RunWrite = <C extends Change>(
  work: (book: Logbook) => Promise<C>,
  options?: WriteOptions,
) => Promise<C | undefined>;

/** The only way from a screen to the book. */
export function useWrite(): RunWrite {
  const { book, shelf, entry, surroundings, sendOut } = useLogbook();
  const say = useNotices((notices) => notices.say);
  const goOn = useNotices((notices) => notices.goOn);
  const push = useUndo((list) => list.push);
  const follow = useUndo((list) => list.follow);

  return useCallback<RunWrite>(
    (work, options = {}) => {
      const attempt = async () => {
        try {
          const change = await work(book);
          if (change.edits.length > 0) {
            countLaps(shelf, book.name, newLaps(change));
            const deed = deedOf(book, change, options.onTakenBack);
            if (options.isFinal === undefined) push(deed);
            if (options.isUndoOffered === true || change.overwrote !== undefined)
              say({ kind: "done", text: `${change.what}.`, actions: [undoOf(deed)] });
            else goOn();
          }
          return change;
        } catch (error) {
          if (!(error instanceof LedgerFault)) throw error;
          const again = { name: "Try again", run: () => void begin() };
          if (options.onFault) options.onFault(error);
          else {
            const text = options.bytes ? await sayNeededSpace(error, options.bytes) : error.message;
            const tell = () => say({ kind: "fault", text, actions: [again, backUp] });
            // Answering closes the notice; what was not stored can still be tried again after the backup.
            const backUp = {
              name: "Save a backup",
              run: () => void saveBackup({ shelf, surroundings, sendOut }, entry).then(tell),
            };
            tell();
          }
          return undefined;
        }
      };
      const begin = () => {
        const writing = attempt();
        follow(writing);
        return writing;
      };
      return begin();
    },
    [book, shelf, entry, surroundings, sendOut, say, goOn, push, follow],
  );
}

/** Counts laps for the reminder to back up. The laps themselves are stored: a count that fails is said, not retried. */
function countLaps(shelf: Shelf, name: string, laps: number): void {
  if (laps === 0) return;
  noteLaps(shelf, name, laps).catch((error: unknown) => {
    if (!(error instanceof LedgerFault)) throw error;
    useNotices.getState().say({ kind: "fault", text: error.message, actions: [] });
  });
}

const undoOf = (deed: Deed) => ({ name: "Undo", run: () => void useUndo.getState().undo(deed) });

/** A change as something that can be taken back, and, taken back, done again. */
function deedOf(book: Logbook, change: Change, onTakenBack?: () => void): Deed {
  return {
    what: change.what,
    takeBack: async () => {
      try {
        const back = await undoChange(book, change);
        const left = back.skipped.length === 0 ? "" : ` Left as it is: ${back.skipped.join(", ")}.`;
        onTakenBack?.();
        useNotices.getState().say({ kind: "done", text: `${back.what}.${left}`, actions: [] });
        return deedOf(book, back);
      } catch (error) {
        if (!(error instanceof LedgerFault)) throw error;
        useNotices.getState().say({ kind: "fault", text: error.message, actions: [] });
        return undefined;
      }
    },
  };
}
