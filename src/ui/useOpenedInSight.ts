import { type RefObject, useEffect } from "react";
import { untilDeed } from "./untilDeed.ts";

/**
 * Brings a part that was opened inside a dialog into sight, and again while it still grows, because what is in it may have to
 * be read first; until the driver does anything else. On a page nothing moves.
 * @param isOpened it was opened by a press, not by whoever drew it
 */
export function useOpenedInSight(isOpened: boolean, part: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const element = part.current;
    const dialog = element?.closest("dialog");
    if (!isOpened || !element || !dialog || typeof ResizeObserver === "undefined") return;
    const observer = new ResizeObserver(() => element.scrollIntoView({ block: "nearest" }));
    const end = () => observer.disconnect();
    observer.observe(element);
    const stop = untilDeed(dialog, end);
    return () => {
      end();
      stop();
    };
  }, [isOpened, part]);
}
