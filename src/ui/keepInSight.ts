import { untilDeed } from "./untilDeed.ts";

/**
 * Scrolls to something, and again while the page around it still grows, because what stands above it may have to be worked out
 * first; until the driver does anything.
 * @returns stops it
 */
export function keepInSight(element: HTMLElement): () => void {
  const show = () => element.scrollIntoView?.({ block: "center" });
  show();
  if (typeof ResizeObserver === "undefined") return () => undefined;
  const observer = new ResizeObserver(show);
  observer.observe(document.body);
  const end = () => observer.disconnect();
  const stop = untilDeed(window, end);
  return () => {
    end();
    stop();
  };
}
