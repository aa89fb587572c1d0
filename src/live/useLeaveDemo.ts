import {
  createLogbook,
  draftsFrom,
  LedgerFault,
  moveDrafts,
  noteOpened,
  openLogbook,
  type ShelvedLogbook,
} from "#db";
import { practiceDay } from "#domain";
import { useNotices } from "#state/notices.ts";
import type { TypedInDemoFound } from "./errands/typedInDemo.ts";
import { draftsSettled } from "./keepDraft.ts";
import { useLogbook } from "./logbookContext.ts";
import { useRemoveLogbook } from "./useRemoveLogbook.ts";

/** What goes with the demo unless it is moved or stored first. */
export interface GoesWithDemo extends TypedInDemoFound {
  /** The words of lines and forms that are half typed, in any tab. */
  readonly halfTyped: readonly string[];
}

export interface LeaveDemo {
  /** What the driver typed in the demo; undefined when that could not be told, which the driver has then been told. */
  readonly look: (demo: ShelvedLogbook) => Promise<GoesWithDemo | undefined>;
  /**
   * Moves what was typed and half typed to a logbook of the driver's own, a new one where there is none, and removes the demo
   * once that is stored. False when it failed; the demo is then as it was.
   */
  readonly moveAndRemove: (demo: ShelvedLogbook, to: ShelvedLogbook | undefined) => Promise<boolean>;
}

/**
 * The ways out of the demo.
 * @param address where the demo lies as it came
 */
export function useLeaveDemo(address: string): LeaveDemo {
  const { shelf, surroundings, sendOut } = useLogbook();
  const say = useNotices((notices) => notices.say);
  const remove = useRemoveLogbook();

  const told = async <R>(work: () => Promise<R>): Promise<R | undefined> => {
    try {
      return await work();
    } catch (error) {
      if (!(error instanceof LedgerFault)) throw error;
      say({ kind: "fault", text: error.message, actions: [] });
      return undefined;
    }
  };
  const find = (demo: ShelvedLogbook) =>
    sendOut(demo.name, "typedInDemo", { address: new URL(address, document.baseURI).href });

  const moveAndRemove: LeaveDemo["moveAndRemove"] = async (demo, to) => {
    const moved = await told(async () => {
      // Looked at again: a lap may have been typed since, in another tab.
      const { bytes, laps } = await find(demo);
      const home = to ?? (await createLogbook(shelf, { title: "My logbook" }));
      const expect = home.openedOn.length > 0 ? "old" : "any";
      (await openLogbook({ ...surroundings, name: home.name, expect })).close();
      await noteOpened(shelf, home.name, practiceDay(surroundings.clock(), surroundings.zone(), 4));
      const source = new Blob([bytes]);
      const from = "what you typed in the demo";
      await sendOut(home.name, "merge", { source, from, title: home.title, isDateConfirmed: false });
      await draftsSettled(`${demo.name}/`);
      await moveDrafts(shelf, demo.name, home.name);
      return { home, laps };
    });
    if (moved === undefined) return false;
    const { home, laps } = moved;
    const what =
      laps === 0 ? "What you typed" : laps === 1 ? "The lap you typed" : `The ${laps} laps you typed`;
    await remove(demo, {
      next: home.name,
      before: `${what} ${laps > 1 ? "are" : "is"} in “${home.title}”. `,
    });
    return true;
  };
  const look: LeaveDemo["look"] = (demo) =>
    told(async () => {
      const beginning = `${demo.name}/`;
      await draftsSettled(beginning);
      const drafts = await draftsFrom(shelf, beginning);
      const halfTyped = drafts.map(({ text }) => text.trim()).filter((text) => text !== "");
      return { ...(await find(demo)), halfTyped };
    });
  return { look, moveAndRemove };
}
