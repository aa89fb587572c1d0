import type { CalendarDate, RigSettings } from "./rows.ts";

/** Records of rig settings from the oldest to the newest; of two from one day the one written later holds. */
export function rigsInOrder(rigs: readonly RigSettings[]): RigSettings[] {
  return [...rigs].sort((a, b) => (a.from === b.from ? a.createdAt - b.createdAt : a.from < b.from ? -1 : 1));
}

/** The rig settings in force on a date: the last record from that day or before it. */
export function rigOn(rigs: readonly RigSettings[], on: CalendarDate): RigSettings | undefined {
  return rigsInOrder(rigs).findLast(({ from }) => from <= on);
}
