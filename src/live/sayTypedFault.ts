import { LedgerFault } from "#db";
import { useNotices } from "#state/notices.ts";

/** What was typed cannot be kept: said once, not at every key. */
export function sayTypedFault(error: unknown): void {
  if (!(error instanceof LedgerFault)) throw error;
  const { list, say } = useNotices.getState();
  const isSaid = list.some(({ text }) => text === error.message);
  if (!isSaid) say({ kind: "fault", text: error.message, actions: [] });
}
