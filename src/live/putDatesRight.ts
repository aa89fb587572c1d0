import { LedgerFault } from "#db";
import { practiceDay } from "#domain";
import { useNotices } from "#state/notices.ts";
import type { OpenLogbook } from "./logbookContext.ts";

/** Puts the stamps right that lie ahead, now that the driver has confirmed the date, and says so. */
export async function putDatesRight({ book, sendOut, surroundings }: OpenLogbook): Promise<void> {
  const today = practiceDay(surroundings.clock(), surroundings.zone(), 0);
  const { say } = useNotices.getState();
  try {
    const rows = await sendOut(book.name, "putDatesRight", { today });
    const text = rows === 1 ? "One entry is dated right now." : `${rows} entries are dated right now.`;
    say({ kind: "done", text, actions: [] });
  } catch (error) {
    if (!(error instanceof LedgerFault)) throw error;
    say({ kind: "fault", text: error.message, actions: [] });
  }
}
