import { useSyncExternalStore } from "react";
import { breakpoints } from "#ui/breakpoints.ts";

const query = `(min-width: ${breakpoints.desk}px)`;

/** Whether there is room for the questions beside the chart. */
export function useIsDesk(): boolean {
  return useSyncExternalStore(
    (changed) => {
      const list = window.matchMedia?.(query);
      list?.addEventListener("change", changed);
      return () => list?.removeEventListener("change", changed);
    },
    () => window.matchMedia?.(query).matches ?? false,
  );
}
