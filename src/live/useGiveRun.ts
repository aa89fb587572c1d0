import { type GivenRun, giveRun, LedgerFault, type Logbook, openLogbook, undoChange } from "#db";
import type { Id } from "#domain";
import { useNotices } from "#state/notices.ts";
import { type Deed, useUndo } from "#state/undo.ts";
import { useLogbook } from "./logbookContext.ts";

/** Moves a run to another logbook of the shelf; false when it failed, which the driver has then been told. */
export function useGiveRun(): (runId: Id, to: { name: string; title: string }) => Promise<boolean> {
  const { book, surroundings } = useLogbook();
  const say = useNotices((notices) => notices.say);

  /** Works with the other logbook and closes it again; undefined when that failed. */
  const withOther = async <T>(name: string, work: (other: Logbook) => Promise<T>): Promise<T | undefined> => {
    try {
      const other = await openLogbook({ ...surroundings, name, expect: "old" });
      try {
        return await work(other);
      } finally {
        other.close();
      }
    } catch (error) {
      if (!(error instanceof LedgerFault)) throw error;
      say({ kind: "fault", text: error.message, actions: [] });
      return undefined;
    }
  };

  return async (runId, to) => {
    const give = async (): Promise<Deed | undefined> => {
      const given = await withOther(to.name, (other) => giveRun(book, other, runId));
      return given && { what: `Run moved to “${to.title}”`, takeBack: () => takeBack(given) };
    };
    const takeBack = async ({ there, here }: GivenRun): Promise<Deed | undefined> => {
      // Back here first: a failure between the two leaves the run in both, not in none.
      const back = await withOther(to.name, async (other) => {
        await undoChange(book, here);
        for (const change of there.toReversed()) await undoChange(other, change);
        return true;
      });
      if (back === undefined) return undefined;
      say({ kind: "done", text: `The run is back from “${to.title}”.`, actions: [] });
      return { what: `Run moved to “${to.title}”`, takeBack: give };
    };
    const deed = await give();
    if (deed === undefined) return false;
    const { push, undo } = useUndo.getState();
    push(deed);
    say({
      kind: "done",
      text: `${deed.what}.`,
      actions: [{ name: "Undo", run: () => void undo(deed) }],
    });
    return true;
  };
}
