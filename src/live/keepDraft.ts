import { type Draft, draftKey, forgetDraft, type Shelf, writeDraft } from "#db";
import type { Id } from "#domain";

/** What is kept of a draft, besides the tab it is typed in and the time. */
export type Kept = Pick<Draft, "text" | "state">;

/** What waits behind the write on its way, by what it is about: nothing, or the newest state; and the end of it all. */
const waiting = new Map<string, { readonly next: (Kept | undefined)[]; readonly done: Promise<void> }>();

/**
 * Keeps the state of a draft of this tab; undefined forgets it. While one state is on its way to the disk, the newest
 * takes the place of those in between, so that a quick hand never runs ahead of a slow disk by more than a key or two.
 * Throws LedgerFault when the newest could not be kept.
 */
export async function keepDraft(
  shelf: Shelf,
  tab: Promise<Id>,
  about: string,
  kept: Kept | undefined,
): Promise<void> {
  const before = waiting.get(about);
  if (before !== undefined) {
    before.next[0] = kept;
    return before.done;
  }
  const next = [kept];
  const done = (async () => {
    const id = await tab;
    while (next.length > 0) await put(shelf, id, about, next.pop());
  })().finally(() => waiting.delete(about));
  waiting.set(about, { next, done });
  return done;
}

/** Settles when nothing typed about things whose key begins so is on its way to the disk any more, kept or not. */
export async function draftsSettled(beginning: string): Promise<void> {
  const under = [...waiting].filter(([about]) => about.startsWith(beginning));
  await Promise.allSettled(under.map(([, { done }]) => done));
}

function put(shelf: Shelf, tab: Id, about: string, kept: Kept | undefined): Promise<void> {
  const key = draftKey(about, tab);
  if (kept === undefined) return forgetDraft(shelf, key);
  return writeDraft(shelf, { ...kept, key, tab, at: shelf.clock() });
}
