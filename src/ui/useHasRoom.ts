import { useCallback, useSyncExternalStore } from "react";
import { boxWidths } from "./breakpoints.ts";

/**
 * Whether the page, without its edges, is as wide as one of the house's boxes: like them it follows the size of the text. False
 * where nothing can be measured.
 */
export function useHasRoom(name: keyof typeof boxWidths): boolean {
  const hasRoom = useCallback(() => {
    const root = document.documentElement;
    const style = getComputedStyle(root);
    const edge = Number.parseFloat(style.getPropertyValue("--edge"));
    return root.clientWidth - 2 * edge >= boxWidths[name] * Number.parseFloat(style.fontSize);
  }, [name]);
  return useSyncExternalStore(follow, hasRoom);
}

/** Larger text makes a higher page, so that its size is followed as well. */
function follow(onChange: () => void): () => void {
  const observer = typeof ResizeObserver === "undefined" ? undefined : new ResizeObserver(onChange);
  observer?.observe(document.documentElement);
  window.addEventListener("resize", onChange);
  return () => {
    observer?.disconnect();
    window.removeEventListener("resize", onChange);
  };
}
