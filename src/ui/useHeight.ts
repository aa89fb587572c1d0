import { type RefCallback, useCallback } from "react";

/**
 * Keeps the height of an element in a custom property of the page, so that what lies under it can leave room. One that
 * stands beside the page says so in its style by "--is-beside: 1" and covers nothing.
 * @param property "--entry-height"
 */
export function useHeight(property: string): RefCallback<HTMLElement> {
  return useCallback(
    (element) => {
      if (element === null || typeof ResizeObserver === "undefined") return;
      const root = document.documentElement.style;
      const covers = () => {
        const style = getComputedStyle(element);
        return style.position === "fixed" && style.getPropertyValue("--is-beside").trim() !== "1";
      };
      const observer = new ResizeObserver(() => {
        root.setProperty(property, covers() ? `${element.offsetHeight}px` : "0px");
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
