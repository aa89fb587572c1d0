import { fireEvent } from "@testing-library/react";

/**
 * Picks an option of a list by its words or its value, as one event. A browser tells `input` and `change` in one breath; between
 * two events of a test all that waits is drawn, which puts the list back to what stood there.
 */
export function pick(list: HTMLElement, option: string | HTMLElement): void {
  const found = [...list.querySelectorAll("option")].find(
    (one) => one === option || one.value === option || one.textContent === option,
  );
  if (found === undefined) throw new RangeError(`the list has no option ${option}`);
  fireEvent.change(list, { target: { value: found.value } });
}
