import { useSyncExternalStore } from "react";

const query = "(min-width: 1000px)";

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
