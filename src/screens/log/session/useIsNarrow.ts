import { useSyncExternalStore } from "react";
import { narrowerThan } from "#ui/breakpoints.ts";

const query = narrowerThan("phone");

/** Whether the page is as narrow as a phone, where the ledger has fewer columns and rows of two lines. */
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
