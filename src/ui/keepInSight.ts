import { untilDeed } from "./untilDeed.ts";

/**
 * Scrolls to something, and again whenever it is pushed out of sight, because what stands above it may have to be worked out
 * first; until the driver does anything.
 * @returns stops it
 */
export function keepInSight(element: HTMLElement): () => void {
  const show = () => element.scrollIntoView?.({ block: "center" });
  show();
  if (typeof IntersectionObserver === "undefined") return () => undefined;
  const observer = new IntersectionObserver((seen) => {
    if (seen.at(-1)?.isIntersecting === false) show();
  });
  observer.observe(element);
  const end = () => observer.disconnect();
  const stop = untilDeed(window, end);
  return () => {
    end();
    stop();
  };
}
