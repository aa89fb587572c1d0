import { faultOf } from "./fault.ts";
import type { Draft, Shelf } from "./shelf.ts";

/** The text kept under a key; undefined when there is none. */
export async function readDraft(shelf: Shelf, key: string): Promise<Draft | undefined> {
  return shelf.drafts.get(key);
}

/** Every text kept, read once at the start. */
export async function readDrafts(shelf: Shelf): Promise<Draft[]> {
  return shelf.drafts.toArray();
}

/** Keeps a text under its key, in place of the one before. Throws LedgerFault. */
export async function writeDraft(shelf: Shelf, draft: Draft): Promise<void> {
  try {
    await shelf.drafts.put(draft);
  } catch (error) {
    throw faultOf(error, "Typed text not kept");
  }
}

/** Forgets the text of a key. */
export async function forgetDraft(shelf: Shelf, key: string): Promise<void> {
  try {
    await shelf.drafts.delete(key);
  } catch (error) {
    throw faultOf(error, "Typed text not forgotten");
  }
}
