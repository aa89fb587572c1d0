import { useEffect, useRef } from "react";
import { useDevice } from "#state/device.ts";

/** What takes digits itself; a choice of a few, a link and a button do not. */
const takesDigits = [
  "input:not([type=radio],[type=checkbox],[type=button],[type=submit])",
  "textarea",
  "select",
  "[contenteditable]",
  "[role=combobox]",
  "[role=listbox]",
  "[role=slider]",
  "[role=spinbutton]",
  "[role=menu]",
].join(",");

/**
 * Digits that are typed while a choice, a link, a button or nothing has the focus go to the entry line; none is taken from
 * a field or while a dialog is open. The device's setting switches it off (WCAG 2.1.4: single keys without a modifier).
 * @param type writes the digit into the line and gives it the focus; absent while the line is not on the page
 */
export function useDigitsHome(type: ((digit: string) => void) | undefined): void {
  const isOff = useDevice(({ digits }) => digits === "left");
  const latest = useRef(type);
  latest.current = type;
  useEffect(() => {
    if (isOff) return;
    const onKey = (event: KeyboardEvent) => {
      const { key, target } = event;
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || !/^\d$/.test(key))
        return;
      if (target instanceof Element && target.closest(takesDigits) !== null) return;
      if (document.querySelector("dialog[open]") !== null || latest.current === undefined) return;
      event.preventDefault();
      latest.current(key);
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [isOff]);
}
