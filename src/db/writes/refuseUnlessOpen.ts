import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { LogbookStatus } from "../status.ts";

const closedBecause: Readonly<Record<Exclude<LogbookStatus["kind"], "ok">, string>> = {
  blocked: "another tab of Lap Ledger holds the logbook open in an older version. Close it to go on.",
  newerTab: "Lap Ledger was updated in another tab. Reload this page; typed text is kept.",
  newer: "this logbook was last used by a newer version of Lap Ledger. Reload to get it.",
  gone: "the stored logbook has disappeared from this browser. Restore a backup.",
  closed: "the browser lost its connection to the logbook. Reload the page; typed text is kept.",
};

/** Throws when nothing may be written to the logbook. */
export function refuseUnlessOpen(book: Logbook, notDone: string): void {
  const { kind } = book.status.get();
  if (kind !== "ok")
    throw new LedgerFault(kind === "blocked" ? "closed" : kind, `${notDone}: ${closedBecause[kind]}`);
}
