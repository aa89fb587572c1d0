import { type RefObject, useEffect, useRef } from "react";
import { useAddress } from "#state/address.ts";
import { useNotices } from "#state/notices.ts";

const fields = "form input, form select, form textarea";

/**
 * What was done is no longer news once the driver has gone on to filling in a form, or to a field that the notices lie
 * over, or to another place; Ctrl Z takes it back from there, too. What the way there itself has done is still said.
 * The entry line is no form; the next stored lap takes them away.
 */
export function useGoneOn(notices: RefObject<HTMLElement | null>): void {
  const goOn = useNotices((list) => list.goOn);
  const goElsewhere = useNotices((list) => list.goElsewhere);
  const press = useNotices((list) => list.press);
  const address = useAddress();
  const here = address.place === "review" ? `review ${address.part ?? "one"}` : address.place;
  const before = useRef(here);
  useEffect(() => {
    window.addEventListener("pointerdown", press, true);
    window.addEventListener("keydown", press);
    return () => {
      window.removeEventListener("pointerdown", press, true);
      window.removeEventListener("keydown", press);
    };
  }, [press]);
  useEffect(() => {
    if (before.current !== here) goElsewhere();
    before.current = here;
  }, [here, goElsewhere]);
  useEffect(() => {
    const onField = ({ type, target }: Event) => {
      if (!(target instanceof Element && target.matches(fields))) return;
      if (type === "input" || (notices.current !== null && overlap(notices.current, target))) goOn();
    };
    document.addEventListener("focusin", onField);
    document.addEventListener("input", onField);
    return () => {
      document.removeEventListener("focusin", onField);
      document.removeEventListener("input", onField);
    };
  }, [goOn, notices]);
}

function overlap(one: Element, other: Element): boolean {
  const [a, b] = [one.getBoundingClientRect(), other.getBoundingClientRect()];
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
