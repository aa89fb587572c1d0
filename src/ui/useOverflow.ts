import { type RefObject, useEffect, useRef, useState } from "react";

/** Tells whether a box is narrower than what it holds, so that it can be made focusable for scrolling by key. */
export function useOverflow(): {
  readonly box: RefObject<HTMLDivElement | null>;
  readonly overflows: boolean;
} {
  const box = useRef<HTMLDivElement>(null);
  const [overflows, setOverflows] = useState(false);
  useEffect(() => {
    const element = box.current;
    if (element === null || typeof ResizeObserver === "undefined") return;
    const measure = () => setOverflows(element.scrollWidth > element.clientWidth + 1);
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    for (const child of element.children) observer.observe(child);
    return () => observer.disconnect();
  }, []);
  return { box, overflows };
}
