import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/** A change that takes another one back, with what could not be taken back, in words. */
export interface Undone extends Change {
  readonly skipped: readonly string[];
  /** What was done in the first place. */
  readonly of: string;
  /** The taking back was itself taken back. */
  readonly isDoneAgain: boolean;
}

/**
 * Takes a change back. Only the fields, and inside runs only the laps, that the change altered and that nobody has
 * altered since are put back; what the change made is marked as deleted, unless it is used elsewhere by now. What had to be
 * left is said in `skipped`. The result is itself a change: taking it back does the first one again
 * ("Undone: Lap 4 deleted", then "Done again: Lap 4 deleted"). How it is done is fetched when it is needed. Throws LedgerFault.
 */
export async function undoChange(book: Logbook, change: Change | Undone): Promise<Undone> {
  const { undoEdits } = await import("./undoEdits.ts").catch((error: unknown) => {
    const why = "a part of the app could not be fetched. Reload when the connection is back.";
    throw new LedgerFault("failed", `Not undone: ${why}`, error);
  });
  return write(book, "Not undone", async (writer) => {
    const skipped = await undoEdits(writer, change.edits);
    const isDoneAgain = "of" in change && !change.isDoneAgain;
    const of = "of" in change ? change.of : change.what;
    const done = changeOf(writer, `${isDoneAgain ? "Done again" : "Undone"}: ${of}`);
    return { ...done, of, isDoneAgain, skipped };
  });
}
