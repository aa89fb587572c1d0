import { type RefObject, useEffect } from "react";
import type { DataPart } from "#state/address.ts";
import { untilDeed } from "#ui/untilDeed.ts";

/**
 * Scrolls to the part of the page that the address asks for and gives its heading the focus; again while the parts above it
 * still come, until the driver does anything.
 */
export function usePartAsked(page: RefObject<HTMLElement | null>, part: DataPart | undefined): void {
  useEffect(() => {
    const box = page.current;
    if (part === undefined || box === null) return;
    const show = () => {
      const heading = box.querySelector<HTMLElement>(`[data-part-of="${part}"] h2`);
      if (heading === null) return;
      heading.tabIndex = -1;
      heading.scrollIntoView?.({ block: "start" });
      heading.focus({ preventScroll: true });
    };
    // After the page itself has taken the focus, as every place does when it opens.
    const soon = requestAnimationFrame(show);
    const observer = new MutationObserver(show);
    observer.observe(box, { childList: true, subtree: true });
    const end = () => observer.disconnect();
    const stop = untilDeed(window, end);
    return () => {
      cancelAnimationFrame(soon);
      end();
      stop();
    };
  }, [page, part]);
}
