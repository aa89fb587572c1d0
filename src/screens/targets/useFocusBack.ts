import { type RefObject, useEffect, useRef } from "react";

/** Brings the focus back to what opened a form, once the form has closed and the opener is there again. */
export function useFocusBack(isOpen: boolean, opener: RefObject<HTMLElement | null>): void {
  const wasOpen = useRef(isOpen);
  useEffect(() => {
    if (wasOpen.current && !isOpen) opener.current?.focus();
    wasOpen.current = isOpen;
  }, [isOpen, opener]);
}
