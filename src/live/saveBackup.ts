import { LedgerFault, type ShelvedLogbook } from "#db";
import type { AllRows } from "#domain";
import { useNotices } from "#state/notices.ts";
import type { Around } from "./handOverBackup.ts";
import type { Surroundings } from "./openAtStart.ts";

/**
 * Saves a backup of a logbook of the shelf, from wherever something went wrong; what it needs is fetched when asked
 * for. False when it failed, which the driver has then been told.
 */
export async function saveBackup(
  around: Around,
  logbook: Pick<ShelvedLogbook, "name" | "title">,
  { isSmall = false }: { readonly isSmall?: boolean } = {},
): Promise<boolean> {
  const { say } = useNotices.getState();
  try {
    const { handOverBackup } = await fetchPart();
    const { file, unreadable } = await handOverBackup(around, logbook, isSmall);
    const handed = `Backup handed to this browser’s downloads as ${file}.`;
    if (unreadable.length === 0) say({ kind: "done", text: handed, actions: [] });
    else say({ kind: "fault", text: `${handed} ${sayMissing(unreadable)}`, actions: [] });
    return true;
  } catch (error) {
    const again = { name: "Try again", run: () => void saveBackup(around, logbook, { isSmall }) };
    say({ kind: "fault", text: whyNot(error), actions: [again] });
    return false;
  }
}

/** Saves what this tab still holds of a logbook that has disappeared from the browser. */
export async function saveHeldRows(
  surroundings: Surroundings,
  rows: AllRows,
  { title, schema }: { readonly title: string; readonly schema: number },
): Promise<void> {
  const { say } = useNotices.getState();
  try {
    const { handOverRows } = await fetchPart();
    const file = await handOverRows(surroundings, rows, { title, schema });
    say({
      kind: "done",
      text: `What this tab still holds was handed to this browser’s downloads as ${file}.`,
      actions: [],
    });
  } catch (error) {
    say({ kind: "fault", text: whyNot(error), actions: [] });
  }
}

class NotFetched extends Error {}

async function fetchPart() {
  try {
    return await import("./handOverBackup.ts");
  } catch (error) {
    throw new NotFetched("not fetched", { cause: error });
  }
}

function sayMissing(unreadable: readonly { readonly table: string; readonly id: string }[]): string {
  const rows = unreadable.length === 1 ? "One row" : `${unreadable.length} rows`;
  const named = unreadable.slice(0, 3).map(({ table, id }) => `${table} ${id}`);
  const are = unreadable.length === 1 ? "is" : "are";
  return `${rows} could not be read and ${are} not in it: ${named.join(", ")}${unreadable.length > 3 ? " and more" : ""}.`;
}

function whyNot(error: unknown): string {
  if (error instanceof LedgerFault) return error.message;
  if (error instanceof NotFetched)
    return "Backup not saved: a part of the app could not be fetched. Reload when the connection is back.";
  return `Backup not saved: ${String(error)}`;
}
