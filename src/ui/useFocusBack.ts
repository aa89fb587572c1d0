import { useLayoutEffect, useRef } from "react";

/** When an element with an id was taken out of the page for a while and is back, it gets the focus. */
export function useFocusBack(id: string | undefined): void {
  const before = useRef(id);
  useLayoutEffect(() => {
    if (id === undefined && before.current !== undefined) document.getElementById(before.current)?.focus();
    before.current = id;
  }, [id]);
}
