import { Dexie, RangeSet } from "dexie";

/**
 * Has every tab read again what it shows. A tab that crashed after storing and before telling left the others behind;
 * the next one that opens makes up for it.
 */
export function readAgainEverywhere(): void {
  Dexie.on.storagemutated.fire({ all: new RangeSet(Number.NEGATIVE_INFINITY, [[]]) });
}
