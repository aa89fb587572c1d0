import { type RefObject, useEffect, useRef } from "react";

/**
 * Where a form that goes leaves the driver: at the top of the answer, its heading read out, or at the beginning of a new review.
 * To be told before the address changes. What comes next and asks for the focus still gets it.
 */
export function useLeft(): RefObject<"answer" | "review" | undefined> {
  const left = useRef<"answer" | "review">(undefined);
  useEffect(
    () => () => {
      if (left.current === undefined) return;
      const heading = left.current === "answer" ? document.getElementById("first-corner") : null;
      (heading ?? document.getElementById("main"))?.focus({ preventScroll: true });
      window.scrollTo(0, 0);
    },
    [],
  );
  return left;
}
