import { type RefCallback, useCallback } from "react";

/**
 * Keeps in "--heads-top" how far down the page the entry line reaches while it sticks to the top, so that the heads of
 * the columns stick right under it. Where the entry line stands below (on a phone) that is nothing.
 */
export function useHeadsTop(): RefCallback<HTMLElement> {
  return useCallback((element) => {
    if (element === null || typeof ResizeObserver === "undefined") return;
    const root = document.documentElement.style;
    const measure = () => {
      const { position, insetBlockStart } = getComputedStyle(element);
      const top = Number.parseFloat(insetBlockStart) || 0;
      root.setProperty("--heads-top", position === "sticky" ? `${top + element.offsetHeight}px` : "");
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    window.addEventListener("resize", measure);
    return () => {
      observer.disconnect();
      window.removeEventListener("resize", measure);
      root.removeProperty("--heads-top");
    };
  }, []);
}
