import { forgetDraft, type Shelf, writeDraft } from "#db";

/** What waits behind the write on its way, by key: nothing, or the newest state. */
const waiting = new Map<string, unknown[]>();

/**
 * Keeps the state of a draft; undefined forgets it. While one state is on its way to the disk, the newest takes the
 * place of those in between, so that a quick hand never runs ahead of a slow disk by more than a key or two.
 * Throws LedgerFault when the newest could not be kept.
 */
export async function keepDraft(shelf: Shelf, key: string, state: unknown): Promise<void> {
  const behind = waiting.get(key);
  if (behind !== undefined) {
    behind[0] = state;
    return;
  }
  const next = [state];
  waiting.set(key, next);
  try {
    while (next.length > 0) await put(shelf, key, next.pop());
  } finally {
    waiting.delete(key);
  }
}

function put(shelf: Shelf, key: string, state: unknown): Promise<void> {
  if (state === undefined) return forgetDraft(shelf, key);
  return writeDraft(shelf, { key, text: typeof state === "string" ? state : "", state });
}
