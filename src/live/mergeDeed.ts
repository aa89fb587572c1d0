import { LedgerFault } from "#db";
import { useNotices } from "#state/notices.ts";
import type { Deed } from "#state/undo.ts";
import type { MergeDone } from "./errands/merge.ts";
import type { SendOut } from "./errands/sending.ts";

interface MergedFile {
  readonly sendOut: SendOut;
  readonly logbook: string;
  readonly source: Blob;
  readonly done: MergeDone;
}

/** A merge as something that can be taken back. To do it again, the file is merged again. */
export function mergeDeed({ sendOut, logbook, source, done }: MergedFile): Deed {
  const { what, rows: _, ...kept } = done;
  return {
    what,
    takeBack: async () => {
      const { say } = useNotices.getState();
      try {
        const { skipped } = await sendOut(logbook, "takeBack", { source, ...kept });
        const left = skipped.length === 0 ? "" : ` Left as it is: ${skipped.join(", ")}.`;
        say({ kind: "done", text: `Undone: ${what}.${left}`, actions: [] });
      } catch (error) {
        if (!(error instanceof LedgerFault)) throw error;
        say({ kind: "fault", text: error.message, actions: [] });
      }
      return undefined;
    },
  };
}
