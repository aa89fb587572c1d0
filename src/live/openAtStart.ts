import {
  createLogbook,
  idMaker,
  LedgerFault,
  type Logbook,
  type LogbookStatus,
  listLogbooks,
  noteOpened,
  openLogbook,
  openShelf,
  type Shelf,
  type ShelvedLogbook,
} from "#db";
import { practiceDay } from "#domain";
import type { Device } from "#state/device.ts";

/** What this machine gives: the time, the zone it is in, and ids that sort by the time they were made. */
export interface Surroundings {
  readonly clock: () => number;
  readonly zone: () => string;
  readonly newId: () => string;
}

/** The real ones of the browser. */
export function browserSurroundings(): Surroundings {
  return {
    clock: Date.now,
    zone: () => Intl.DateTimeFormat().resolvedOptions().timeZone,
    newId: idMaker(Date.now),
  };
}

export interface Opened {
  readonly shelf: Shelf;
  readonly book: Logbook;
  readonly entry: ShelvedLogbook;
}

const lost =
  "The logbook that was kept here has disappeared from this browser, perhaps because site data were cleared. Restore a backup, or begin afresh.";

/**
 * Opens the shelf and the logbook opened last, or makes the first one. Throws LedgerFault; `gone` also when the shelf
 * is empty although this device remembers sessions.
 * @param name the logbook wanted; without it, the one this device opened last
 */
export async function openAtStart(
  surroundings: Surroundings,
  device: Pick<Device, "logbook" | "markers">,
  options: { readonly name?: string; readonly onStatus?: (status: LogbookStatus) => void } = {},
): Promise<Opened> {
  const { clock, newId, zone } = surroundings;
  const shelf = await openShelf({ clock, newId });
  try {
    const shelved = await listLogbooks(shelf);
    const wanted = options.name ?? device.logbook;
    const remembered = Object.values(device.markers).some(({ sessions }) => sessions > 0);
    if (shelved.length === 0 && remembered) throw new LedgerFault("gone", lost);
    const entry =
      shelved.find(({ name }) => name === wanted) ??
      shelved[0] ??
      (await createLogbook(shelf, { title: "My logbook" }));
    const book = await openLogbook({
      name: entry.name,
      clock,
      newId,
      expect: entry.openedOn.length > 0 ? "old" : "any",
      ...(options.onStatus && { onStatus: options.onStatus }),
    });
    const sessionsKnown = device.markers[entry.name]?.sessions ?? 0;
    if (sessionsKnown > 0 && (await book.digests.count()) === 0) {
      book.close();
      throw new LedgerFault("gone", lost);
    }
    await noteOpened(shelf, entry.name, practiceDay(clock(), zone(), 4));
    return { shelf, book, entry };
  } catch (error) {
    shelf.close();
    throw error;
  }
}
