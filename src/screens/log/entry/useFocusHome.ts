import { type RefCallback, useCallback } from "react";

/**
 * Focus never falls to nothing: when what had it is taken out of the page, it goes to the part marked `data-home`
 * (the entry line), else to the heading.
 */
export function useFocusHome(): RefCallback<HTMLElement> {
  return useCallback((box) => {
    if (box === null) return;
    let last: EventTarget | null = null;
    const onFocus = ({ target }: FocusEvent) => {
      last = target;
    };
    const observer = new MutationObserver(() => {
      const isLost = last instanceof Node && !last.isConnected && document.activeElement === document.body;
      if (!isLost) return;
      const home = box.querySelector<HTMLElement>("[data-home]") ?? box.querySelector<HTMLElement>("h1");
      home?.focus({ preventScroll: true });
    });
    box.addEventListener("focusin", onFocus);
    observer.observe(box, { childList: true, subtree: true });
    return () => {
      box.removeEventListener("focusin", onFocus);
      observer.disconnect();
    };
  }, []);
}
