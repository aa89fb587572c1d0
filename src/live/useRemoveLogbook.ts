import { createLogbook, LedgerFault, listLogbooks, openShelf, removeLogbook, type ShelvedLogbook } from "#db";
import { forgetMarker } from "#state/device.ts";
import { useNotices } from "#state/notices.ts";
import { useLogbook } from "./logbookContext.ts";

interface RemoveOptions {
  /** Name of the logbook that is opened in place of the open one. */
  readonly next?: string;
  /** Said before the news of the removal. */
  readonly before?: string;
}

/**
 * Removes a logbook for good. When it is the open one, the driver's own logbook opened last comes in its place, or an
 * empty one when there is none.
 */
export function useRemoveLogbook(): (logbook: ShelvedLogbook, options?: RemoveOptions) => Promise<void> {
  const { shelf, book, surroundings, openOther } = useLogbook();
  const say = useNotices((notices) => notices.say);

  return async function remove(logbook, options = {}) {
    const { name, title } = logbook;
    try {
      if (name === book.name) {
        const others = (await listLogbooks(shelf)).filter((other) => other.name !== name);
        const next =
          others.find((one) => one.name === options.next) ??
          others.find(({ kind }) => kind === "own") ??
          others[0];
        openOther((next ?? (await createLogbook(shelf, { title: "My logbook" }))).name);
      }
      const own = await openShelf(surroundings);
      await removeLogbook(own, name).finally(() => own.close());
      forgetMarker(name);
      say({ kind: "done", text: `${options.before ?? ""}“${title}” is removed.`, actions: [] });
    } catch (error) {
      if (!(error instanceof LedgerFault)) throw error;
      const again = { name: "Try again", run: () => void remove(logbook, options) };
      say({ kind: "fault", text: error.message, actions: [again] });
    }
  };
}
