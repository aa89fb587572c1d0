import { type RefObject, useEffect } from "react";
import { pageHeading } from "#ui/pageHeading.ts";

/**
 * Focus never falls to nothing with a notice that goes: it returns to where it came from, else to what the page works
 * with (`data-home`, such as the entry line), else to the page's heading.
 */
export function useNoticeFocus(notices: RefObject<HTMLElement | null>): void {
  useEffect(() => {
    const box = notices.current;
    if (box === null) return;
    let held: Node | null = null;
    let before: EventTarget | null = null;
    const onFocusIn = ({ target, relatedTarget }: FocusEvent) => {
      if (held === null) before = relatedTarget;
      held = target instanceof Node ? target : null;
    };
    // Without a next place the focus may be leaving because its place is being taken away.
    const onFocusOut = ({ relatedTarget }: FocusEvent) => {
      if (relatedTarget instanceof Node && !box.contains(relatedTarget)) held = null;
    };
    const observer = new MutationObserver(() => {
      if (held === null || held.isConnected) return;
      held = null;
      if (document.activeElement !== document.body) return;
      const home = before instanceof HTMLElement && before.isConnected ? before : homeOfPage();
      home?.focus({ preventScroll: true });
    });
    box.addEventListener("focusin", onFocusIn);
    box.addEventListener("focusout", onFocusOut);
    observer.observe(box, { childList: true, subtree: true });
    return () => {
      box.removeEventListener("focusin", onFocusIn);
      box.removeEventListener("focusout", onFocusOut);
      observer.disconnect();
    };
  }, [notices]);
}

function homeOfPage(): HTMLElement | null {
  return (
    document.querySelector<HTMLElement>("[data-home]") ?? pageHeading() ?? document.getElementById("main")
  );
}
