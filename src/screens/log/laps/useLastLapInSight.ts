import { type RefCallback, useCallback, useRef } from "react";
import { timeId } from "./LapRow.tsx";

/**
 * When what is fixed below the laps grows upwards over the newest one, which stood in sight above it, the page goes up by as
 * much. A driver who looks elsewhere in the list is left there.
 * @param lapId the newest lap
 */
export function useLastLapInSight(lapId: string | undefined): RefCallback<HTMLElement> {
  const latest = useRef(lapId);
  latest.current = lapId;
  return useCallback((element) => {
    if (element === null || typeof ResizeObserver === "undefined") return;
    let before = element.getBoundingClientRect().top;
    const observer = new ResizeObserver(() => {
      const { top, bottom } = element.getBoundingClientRect();
      const row = document.getElementById(timeId(latest.current ?? ""))?.closest("tr");
      const isBelow = getComputedStyle(element).position === "fixed" && bottom > window.innerHeight / 2;
      const end = row?.getBoundingClientRect().bottom ?? 0;
      if (isBelow && end > top && end <= before + 1) window.scrollBy(0, end - top);
      before = top;
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
}
