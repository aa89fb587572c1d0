import { noteToldAhead } from "#db";
import { type OpenLogbook, putDatesRight, stampAhead } from "#live";
import { parseAddress } from "#state/address.ts";
import { useNotices } from "#state/notices.ts";
import { sayDatesAhead } from "#words";

/**
 * Tells the driver once of entries that a clock ahead has stamped, and offers to put them right; on Data the page does so
 * by itself. Throws LedgerFault.
 */
export async function tellDatesAhead(open: OpenLogbook): Promise<void> {
  const { book, shelf, entry, surroundings } = open;
  if (parseAddress(window.location.hash).place === "data") return;
  const newest = await stampAhead(book, surroundings.clock());
  if (newest === undefined || newest === entry.toldAhead) return;
  await noteToldAhead(shelf, entry.name, newest);
  const { text, today } = sayDatesAhead(newest, surroundings.clock(), surroundings.zone());
  const { say, close } = useNotices.getState();
  const right = () => {
    close(id);
    void putDatesRight(open);
  };
  const id = say({ kind: "fault", text, actions: [{ name: today, run: right }] });
}
