import { type RefCallback, useCallback } from "react";

/**
 * Keeps the height of an element in a custom property of the page, so that what lies under it can leave room.
 * @param property "--entry-height"
 */
export function useHeight(property: string): RefCallback<HTMLElement> {
  return useCallback(
    (element) => {
      if (element === null || typeof ResizeObserver === "undefined") return;
      const root = document.documentElement.style;
      const isFixed = () => getComputedStyle(element).position === "fixed";
      const observer = new ResizeObserver(() => {
        root.setProperty(property, isFixed() ? `${element.offsetHeight}px` : "0px");
      });
      observer.observe(element);
      return () => {
        observer.disconnect();
        root.removeProperty(property);
      };
    },
    [property],
  );
}
