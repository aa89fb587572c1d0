import { noteToldAhead } from "#db";
import { type OpenLogbook, putDatesRight } from "#live";
import { parseAddress } from "#state/address.ts";
import { useNotices } from "#state/notices.ts";
import { sayDatesAhead } from "#words";

/**
 * Tells the driver once of entries that a clock ahead has stamped, and offers to put them right; on Data the page does so
 * by itself. Throws LedgerFault.
 * @param newest the newest of these stamps
 */
export async function tellDatesAhead(open: OpenLogbook, newest: number): Promise<void> {
  const { shelf, entry, surroundings } = open;
  if (parseAddress(window.location.hash).place === "data") return;
  await noteToldAhead(shelf, entry.name, newest);
  const { text, today } = sayDatesAhead(newest, surroundings.clock(), surroundings.zone());
  const { say, close } = useNotices.getState();
  const right = () => {
    close(id);
    void putDatesRight(open);
  };
  const id = say({ kind: "fault", text, actions: [{ name: today, run: right }] });
}
