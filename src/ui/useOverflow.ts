import { type RefObject, useEffect, useRef, useState } from "react";

/**
 * Tells whether a box is narrower than what it holds, so that it can be made focusable for scrolling by key. While
 * there is more to the right the box carries `data-goes-on`, and base.css lets it fade out there.
 */
export function useOverflow(): {
  readonly box: RefObject<HTMLDivElement | null>;
  readonly overflows: boolean;
} {
  const box = useRef<HTMLDivElement>(null);
  const [overflows, setOverflows] = useState(false);
  useEffect(() => {
    const element = box.current;
    if (element === null || typeof ResizeObserver === "undefined") return;
    const measure = () => {
      const hidden = element.scrollWidth - element.clientWidth;
      setOverflows(hidden > 1);
      element.toggleAttribute("data-goes-on", hidden - element.scrollLeft > 1);
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    for (const child of element.children) observer.observe(child);
    element.addEventListener("scroll", measure, { passive: true });
    return () => {
      observer.disconnect();
      element.removeEventListener("scroll", measure);
    };
  }, []);
  return { box, overflows };
}
