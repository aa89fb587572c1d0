import { type Draft, draftKey, forgetDraft, type Shelf, writeDraft } from "#db";
import type { Id } from "#domain";

/** What is kept of a draft, besides the tab it is typed in and the time. */
export type Kept = Pick<Draft, "text" | "state">;

/** A tab that is killed has kept what was on its way; more than so many states of one draft at once hold up a slow disk. */
const mostOnTheWay = 12;

/** By what is drafted: the states on their way to the disk, and the newest of those that wait for one to arrive. */
const onTheWay = new Map<string, Set<Promise<void>>>();
const waiting = new Map<string, { readonly newest: [Kept | undefined]; readonly done: Promise<void> }>();

/**
 * Keeps the state of a draft of this tab; undefined forgets it. Every state is on its way at once, so that it is kept also
 * where the tab is killed before the disk has answered for the one before. Behind a slow disk the newest takes the place of
 * those in between, so that a quick hand is never ahead by more. Throws LedgerFault when the newest could not be kept.
 */
export async function keepDraft(
  shelf: Shelf,
  tab: Promise<Id>,
  about: string,
  kept: Kept | undefined,
): Promise<void> {
  const before = waiting.get(about);
  if (before !== undefined) {
    before.newest[0] = kept;
    return before.done;
  }
  const sent = onTheWay.get(about) ?? new Set();
  if (sent.size < mostOnTheWay) return send(shelf, tab, about, kept);
  const newest: [Kept | undefined] = [kept];
  const arrived = Promise.race(sent).catch(() => undefined);
  const done = arrived.then(() => {
    waiting.delete(about);
    return send(shelf, tab, about, newest[0]);
  });
  waiting.set(about, { newest, done });
  return done;
}

function send(shelf: Shelf, tab: Promise<Id>, about: string, kept: Kept | undefined): Promise<void> {
  const sent = onTheWay.get(about) ?? new Set();
  onTheWay.set(about, sent);
  const sending = tab
    .then((id) => put(shelf, id, about, kept))
    .finally(() => {
      sent.delete(sending);
      if (sent.size === 0 && onTheWay.get(about) === sent) onTheWay.delete(about);
    });
  sent.add(sending);
  return sending;
}

/** Settles when nothing typed about things whose key begins so is on its way to the disk any more, kept or not. */
export async function draftsSettled(beginning: string): Promise<void> {
  const isUnder = ([about]: readonly [string, unknown]) => about.startsWith(beginning);
  const sent = [...onTheWay].filter(isUnder).flatMap(([, all]) => [...all]);
  const next = [...waiting].filter(isUnder).map(([, { done }]) => done);
  await Promise.allSettled([...sent, ...next]);
}

function put(shelf: Shelf, tab: Id, about: string, kept: Kept | undefined): Promise<void> {
  const key = draftKey(about, tab);
  if (kept === undefined) return forgetDraft(shelf, key);
  return writeDraft(shelf, { ...kept, key, tab, at: shelf.clock() });
}
