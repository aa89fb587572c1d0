import { useSyncExternalStore } from "react";

const query = "(pointer: coarse)";

function follow(onChange: () => void): () => void {
  const list = window.matchMedia?.(query);
  list?.addEventListener("change", onChange);
  return () => list?.removeEventListener("change", onChange);
}

/** Whether the device is worked with fingers. */
export function useIsTouch(): boolean {
  return useSyncExternalStore(follow, () => window.matchMedia?.(query).matches ?? false);
}
