import type { NewLap } from "#db";

/** A clean typed lap, with the fields given. */
export function aLap(ms: number, fields: Partial<NewLap> = {}): NewLap {
  return { ms, decimals: 3, source: "typed", remarks: [], ...fields };
}
