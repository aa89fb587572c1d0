import { Dexie } from "dexie";
import { IDBFactory } from "fake-indexeddb";
import { createLogbook, idMaker, type Logbook, openLogbook, openShelf } from "#db";
import type { Surroundings, Tab } from "#live";
import { useDevice } from "#state/device.ts";
import { useNotices } from "#state/notices.ts";
import { useUndo } from "#state/undo.ts";
import { fixedClock } from "./fixedClock.ts";

/**
 * A fresh browser holding one logbook, "My logbook", and what the page would find in it.
 * @param fill writes into that logbook
 */
export async function freshBrowser(fill: (book: Logbook) => Promise<unknown>, at: number) {
  const factory = new IDBFactory();
  globalThis.indexedDB = factory;
  Dexie.dependencies.indexedDB = factory;
  window.localStorage.clear();
  useDevice.setState(useDevice.getInitialState(), true);
  useNotices.setState({ list: [] });
  useUndo.getState().forget();

  const clock = fixedClock(at);
  const newId = idMaker(clock.now);
  /** The tabs that are open. */
  const living = new Set<string>();
  const openTab = (): Tab => {
    const id = newId();
    living.add(id);
    return { id: Promise.resolve(id), living: async () => living };
  };
  const surroundings: Surroundings = {
    clock: clock.now,
    zone: () => "Europe/Berlin",
    newId,
    tab: openTab(),
  };
  const shelf = await openShelf(surroundings);
  const entry = await createLogbook(shelf, { title: "My logbook" });
  shelf.close();
  const book = await openLogbook({ name: entry.name, ...surroundings });
  await fill(book);
  book.close();
  useDevice.setState({ logbook: entry.name });
  return { clock, entry, surroundings, living, openTab };
}
