import { useLayoutEffect, useRef } from "react";

/**
 * When something that stood in the place of an element, or held the focus for it, has closed, the element that is there
 * again gets the focus.
 * @param open what is open, if anything is
 * @param home the element to come back to from it
 */
export function useFocusBack<T>(
  open: T | undefined,
  home: (open: T) => HTMLElement | null | undefined,
): void {
  const before = useRef(open);
  useLayoutEffect(() => {
    if (open === undefined && before.current !== undefined) home(before.current)?.focus();
    before.current = open;
  });
}
