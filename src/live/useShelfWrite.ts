import { LedgerFault, type Shelf } from "#db";
import { useNotices } from "#state/notices.ts";
import { useLogbook } from "./logbookContext.ts";

/** Runs a change of the list of logbooks; false when it failed, which the driver has then been told. */
export function useShelfWrite(): (work: (shelf: Shelf) => Promise<unknown>) => Promise<boolean> {
  const { shelf } = useLogbook();
  const say = useNotices((notices) => notices.say);
  return async (work) => {
    try {
      await work(shelf);
      return true;
    } catch (error) {
      if (!(error instanceof LedgerFault)) throw error;
      say({ kind: "fault", text: error.message, actions: [] });
      return false;
    }
  };
}
