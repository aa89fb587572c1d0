import { narrowerThan } from "#ui/breakpoints.ts";
import { useMedia } from "#ui/useMedia.ts";

/**
 * Whether the ledger is as narrow as on a phone, where it has fewer columns and rows of two lines: on a phone held upright,
 * and on one held sideways with the pad beside it.
 */
export function useIsNarrow(): boolean {
  return useMedia(`${narrowerThan("phone")}, ${narrowerThan("desk")} and (max-height: 480px)`);
}
