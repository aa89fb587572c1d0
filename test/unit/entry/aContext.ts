import type { EntryContext } from "#entry";

/** A session with a usual lap of 1:23.456 and a PB of 1:23.000. */
export function aContext(changes: Partial<EntryContext> = {}): EntryContext {
  return {
    usualMs: 83_456,
    previousMs: 83_700,
    previousDecimals: 3,
    relativeTo: "lap",
    pbMs: 83_000,
    pbDecimals: 3,
    displayDecimals: 3,
    corners: 12,
    paceTimes: [83_200, 83_400, 83_456, 83_700, 84_000],
    isPractice: true,
    ...changes,
  };
}
