import { useSyncExternalStore } from "react";
import { narrowerThan } from "#ui/breakpoints.ts";

const query = `${narrowerThan("phone")}, ${narrowerThan("desk")} and (max-height: 480px)`;

/**
 * Whether the ledger is as narrow as on a phone, where it has fewer columns and rows of two lines: on a phone held upright,
 * and on one held sideways with the pad beside it.
 */
export function useIsNarrow(): boolean {
  return useSyncExternalStore(
    (changed) => {
      const list = window.matchMedia?.(query);
      list?.addEventListener("change", changed);
      return () => list?.removeEventListener("change", changed);
    },
    () => window.matchMedia?.(query).matches ?? false,
  );
}
