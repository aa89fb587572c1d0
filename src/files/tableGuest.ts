import { longestName } from "#domain";
import { type TableCells, yesOrNo } from "./tableCells.ts";

const word = "name of the guest";

/**
 * Who drove in the driver's place: a name, or empty where none is known; undefined where the driver drove. A column of
 * names holds nothing but names. The ledger's older tables had one cell for both and wrote only "yes" for a guest without
 * a name; in any other table such a cell says yes, no or a name.
 */
export function readGuest(cells: TableCells): string | undefined {
  if (!cells.has("guestName")) return guestOrName(cells);
  const name = cells.text("guestName", word, longestName);
  const isGuest = cells.isYes("guest", "guest driver");
  if (name === undefined) return isGuest ? "" : undefined;
  if (yesOrNo(cells.raw("guest")) === "no")
    return cells.refuse(
      "The row names a guest, and says that no guest drove.",
      "Write yes for the guest, or take the name out.",
    );
  return name;
}

function guestOrName(cells: TableCells): string | undefined {
  const guest = cells.text("guest", word, longestName);
  if (guest === undefined) return undefined;
  // No other table is known to have a column for laps that are not the PB.
  if (cells.has("notBest")) return guest === "yes" ? "" : guest;
  const said = yesOrNo(guest);
  if (said === undefined) return guest.trim();
  return said === "yes" ? "" : undefined;
}
