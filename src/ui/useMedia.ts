import { useCallback, useSyncExternalStore } from "react";

/** Whether a media query holds, followed while it may change; false where the browser cannot tell. */
export function useMedia(query: string): boolean {
  const follow = useCallback(
    (onChange: () => void) => {
      const list = window.matchMedia?.(query);
      list?.addEventListener("change", onChange);
      return () => list?.removeEventListener("change", onChange);
    },
    [query],
  );
  return useSyncExternalStore(follow, () => window.matchMedia?.(query).matches ?? false);
}
