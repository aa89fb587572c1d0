import type { Id } from "#domain";
import { faultOf } from "./fault.ts";
import type { Draft, Shelf } from "./shelf.ts";

/** The text kept under a key; undefined when there is none. */
export async function readDraft(shelf: Shelf, key: string): Promise<Draft | undefined> {
  return shelf.drafts.get(key);
}

/** Every text kept. */
export async function readDrafts(shelf: Shelf): Promise<Draft[]> {
  return shelf.drafts.toArray();
}

/** The key of what is typed in one tab. */
export function draftKey(about: string, tab: Id): string {
  return `${about}|${tab}`;
}

/** What a key is about, whichever tab it was typed in. */
export function draftAbout(key: string): string {
  const bar = key.lastIndexOf("|");
  return bar < 0 ? key : key.slice(0, bar);
}

/** What is typed about one thing, in every tab. */
export async function draftsAbout(shelf: Shelf, about: string): Promise<Draft[]> {
  const rows = await draftsFrom(shelf, about);
  return rows.filter(({ key }) => draftAbout(key) === about);
}

/** What is typed about all things whose key begins so: "lap-ledger-…/lap ". */
export async function draftsFrom(shelf: Shelf, beginning: string): Promise<Draft[]> {
  return shelf.drafts.where("key").startsWith(beginning).toArray();
}

/**
 * Makes what a tab that is gone left behind the draft of this tab, all or nothing. Undefined when another tab was
 * quicker, or when this one has typed about the same thing meanwhile.
 */
export async function takeOverDraft(shelf: Shelf, left: Draft, tab: Id): Promise<Draft | undefined> {
  const mine: Draft = { ...left, key: draftKey(draftAbout(left.key), tab), tab };
  try {
    return await shelf.database.transaction("rw", shelf.drafts, async () => {
      const [there, own] = await shelf.drafts.bulkGet([left.key, mine.key]);
      if (there === undefined || own !== undefined) return undefined;
      await shelf.drafts.delete(left.key);
      await shelf.drafts.put(mine);
      return mine;
    });
  } catch (error) {
    throw faultOf(error, "Typed text not taken over");
  }
}

/**
 * Puts what is half typed in one logbook into another, inside a transaction. Where the same tab has typed about the same
 * thing there, both stay: what comes is then as if left by a tab that is gone, which its form offers.
 */
export async function draftsInto({ drafts, newId }: Shelf, from: string, to: string): Promise<void> {
  for (const draft of await drafts.where("key").startsWith(`${from}/`).toArray()) {
    const key = to + draft.key.slice(from.length);
    const isTaken = (await drafts.get(key)) !== undefined;
    const tab = newId();
    await drafts.put(isTaken ? { ...draft, key: draftKey(draftAbout(key), tab), tab } : { ...draft, key });
    await drafts.delete(draft.key);
  }
}

/** Moves what is half typed in one logbook to another. Throws LedgerFault. */
export async function moveDrafts(shelf: Shelf, from: string, to: string): Promise<void> {
  try {
    await shelf.database.transaction("rw", shelf.drafts, () => draftsInto(shelf, from, to));
  } catch (error) {
    throw faultOf(error, "Half-typed text not moved");
  }
}

/** Keeps a text under its key, in place of the one before. Throws LedgerFault. */
export async function writeDraft(shelf: Shelf, draft: Draft): Promise<void> {
  try {
    await sendOff(shelf, () => shelf.drafts.put(draft));
  } catch (error) {
    throw faultOf(error, "Typed text not kept");
  }
}

/** Forgets the text of a key. */
export async function forgetDraft(shelf: Shelf, key: string): Promise<void> {
  try {
    await sendOff(shelf, () => shelf.drafts.delete(key));
  } catch (error) {
    throw faultOf(error, "Typed text not forgotten");
  }
}

/**
 * One change of the drafts, its commit sent along with it: a tab that is killed before the browser has answered has made
 * it all the same. Those sent first are made first.
 */
function sendOff<T>(shelf: Shelf, change: () => PromiseLike<T>): PromiseLike<T> {
  return shelf.database.transaction("rw", shelf.drafts, (transaction) => {
    const made = change();
    transaction.idbtrans.commit();
    return made;
  });
}
