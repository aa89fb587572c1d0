import { useLayoutEffect, useRef } from "react";
import { pageHeading } from "#ui/pageHeading.ts";

/**
 * When Log shows something else and the focus has gone with what stood there, it goes to the beginning of what stands
 * there now: its heading, or the page while that is fetched. A field that asks for the focus still gets it.
 * @param shown what Log shows; undefined while that is not known
 */
export function useFocusKept(shown: string | undefined): void {
  const before = useRef(shown);
  useLayoutEffect(() => {
    const isOther = before.current !== undefined && shown !== undefined && before.current !== shown;
    before.current = shown ?? before.current;
    if (!isOther || document.activeElement !== document.body) return;
    const beginning = pageHeading() ?? document.getElementById("main");
    beginning?.focus({ preventScroll: true });
  }, [shown]);
}
