import {
  createLogbook,
  idMaker,
  LedgerFault,
  type Logbook,
  listLogbooks,
  noteOpened,
  openLogbook,
  openShelf,
  type Shelf,
  type ShelvedLogbook,
} from "#db";
import { isAheadOf, practiceDay } from "#domain";
import type { Device, Marker } from "#state/device.ts";
import { useOpening } from "#state/opening.ts";
import { browserTab, type Tab } from "./browserTab.ts";
import { localZone } from "./localZone.ts";
import { readAgainEverywhere } from "./readAgainEverywhere.ts";
import { sayLost } from "./sayLost.ts";

/** What this machine gives: the time, the zone it is in, ids that sort by the time they were made, and the tab. */
export interface Surroundings {
  readonly clock: () => number;
  readonly zone: () => string;
  readonly newId: () => string;
  readonly tab: Tab;
}

/** The real ones of the browser. */
export function browserSurroundings(): Surroundings {
  return {
    clock: Date.now,
    zone: localZone(),
    newId: idMaker(Date.now),
    tab: browserTab(),
  };
}

export interface Opened {
  readonly shelf: Shelf;
  readonly book: Logbook;
  readonly entry: ShelvedLogbook;
}

/**
 * Opens the shelf and the logbook opened last, or makes the first one. Throws LedgerFault; `gone` also when the shelf
 * is empty although this device remembers sessions.
 * @param name the logbook wanted; without it, the one this device opened last
 */
export async function openAtStart(
  surroundings: Surroundings,
  device: Pick<Device, "logbook" | "markers">,
  options: { readonly name?: string } = {},
): Promise<Opened> {
  const { clock, newId, zone } = surroundings;
  const lost = (markers: readonly (Marker | undefined)[]) => {
    const now = clock();
    const backups = markers
      .flatMap((marker) => marker?.lastBackupAt ?? [])
      .filter((at) => !isAheadOf(at, now));
    const last = backups.length === 0 ? undefined : practiceDay(Math.max(...backups), zone(), 0);
    return new LedgerFault("gone", sayLost(last));
  };
  const shelf = await openShelf({ clock, newId });
  try {
    const shelved = await listLogbooks(shelf);
    const wanted = options.name ?? device.logbook;
    const remembered = Object.values(device.markers);
    if (shelved.length === 0 && remembered.some(({ sessions }) => sessions > 0)) throw lost(remembered);
    const entry =
      shelved.find(({ name }) => name === wanted) ??
      shelved[0] ??
      (await createLogbook(shelf, { title: "My logbook" }));
    const book = await openLogbook({
      name: entry.name,
      clock,
      newId,
      expect: entry.openedOn.length > 0 ? "old" : "any",
      onStatus: ({ kind }) => useOpening.setState({ isBlocked: kind === "blocked" }),
    }).catch((error: unknown) => {
      throw error instanceof LedgerFault && error.code === "gone"
        ? lost([device.markers[entry.name]])
        : error;
    });
    const marker = device.markers[entry.name];
    if (marker !== undefined && marker.sessions > 0 && (await isEmpty(book))) {
      book.close();
      throw lost([marker]);
    }
    await noteOpened(shelf, entry.name, practiceDay(clock(), zone(), 4));
    readAgainEverywhere();
    return { shelf, book, entry };
  } catch (error) {
    shelf.close();
    throw error;
  }
}

/** No session has ever been in it, not even one that was deleted, or set aside a moment before the page was closed. */
async function isEmpty({ digests, tables, aside }: Logbook): Promise<boolean> {
  const counts = await Promise.all([digests.count(), tables.sessions.count(), aside?.count() ?? 0]);
  return counts.every((count) => count === 0);
}
