import type { Progress } from "./errand.ts";
import type { ErrandDetails, ErrandName, ErrandResult } from "./errands.ts";

/** How an errand is followed and stopped. */
export interface Follow {
  readonly onProgress?: (progress: Progress) => void;
  /** Stopping it ends in the fault `cancelled`; nothing has been changed then. */
  readonly signal?: AbortSignal;
}

/** Sends out an errand on a logbook, named by its database. Throws LedgerFault. */
export type SendOut = <E extends ErrandName>(
  logbook: string,
  errand: E,
  details: ErrandDetails<E>,
  follow?: Follow,
) => Promise<ErrandResult<E>>;
