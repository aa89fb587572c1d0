import type { LedgerFault } from "#db";
import { spaceAllowed } from "#state/storage.ts";

/** Bytes; undefined where it cannot be told. */
type Size = number | undefined;

/**
 * The words of a fault of something large, kept whole or not at all; when it is for want of space, with how much that
 * takes.
 * @param bytes the rows as text, which is about what a browser needs to store them
 */
export async function sayNeededSpace(fault: LedgerFault, bytes: () => Size | Promise<Size>): Promise<string> {
  if (fault.code !== "quota") return fault.message;
  const [needed, allowed] = await Promise.all([bytes(), spaceAllowed()]);
  if (needed === undefined) return `${fault.message} Nothing was changed.`;
  return `${fault.message} Nothing was changed. It needs about ${megabytes(needed)}${sayAllowed(needed, allowed)}`;
}

function sayAllowed(needed: number, allowed: number | undefined): string {
  // Some browsers answer with gigabytes whatever there is: what would suffice and did not is no answer.
  if (allowed === undefined || allowed >= needed)
    return ". How much it may still store, this browser does not tell.";
  return `; this browser says it allows this address about ${megabytes(allowed)} more.`;
}

const megabytes = (bytes: number) => `${Math.max(0.1, bytes / 1_000_000).toFixed(1)} MB`;
