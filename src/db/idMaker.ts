import { v7 } from "uuid";
import type { Id } from "#domain";

const seqEnd = 2 ** 32;

/** Sixteen random bytes, from the browser's own source. */
function randomBytes(): Uint8Array {
  return crypto.getRandomValues(new Uint8Array(16));
}

/**
 * A maker of UUIDs version 7 (RFC 9562, section 6.2: counter of 32 bits behind the milliseconds). The ids of one
 * maker sort in the order they were made, also when the clock stands still or goes back.
 * @param clock epoch milliseconds
 * @param random gives sixteen random bytes; without it, the browser's
 */
export function idMaker(clock: () => number, random: () => Uint8Array = randomBytes): () => Id {
  let msecs = -1;
  let seq = 0;
  return () => {
    const bytes = random();
    const now = clock();
    if (now > msecs) {
      msecs = now;
      seq = new DataView(bytes.buffer, bytes.byteOffset).getUint32(6) >>> 1;
    } else if (++seq === seqEnd) {
      msecs += 1;
      seq = 0;
    }
    return v7({ msecs, seq, random: bytes });
  };
}
