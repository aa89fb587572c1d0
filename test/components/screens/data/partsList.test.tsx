import { screen, within } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { renderAt } from "../../../support/renderAt.tsx";

afterEach(() => Reflect.deleteProperty(Element.prototype, "scrollIntoView"));

it("every part named at the top of Data has its heading, which takes the focus; the address stays", async () => {
  const scrolled = vi.fn();
  Element.prototype.scrollIntoView = scrolled;
  const { user } = await renderAt("#/data", <DataScreen />);
  const list = within(await screen.findByRole("navigation", { name: "Parts of this page" }));
  for (const button of list.getAllByRole("button")) {
    await user.click(button);
    const heading = screen.getByRole("heading", { level: 2, name: button.textContent });
    expect(heading).toHaveFocus();
    expect(scrolled.mock.contexts.at(-1)).toBe(heading);
  }
  const headings = screen.getAllByRole("heading", { level: 2 }).map(({ textContent }) => textContent);
  expect(list.getAllByRole("button").map(({ textContent }) => textContent)).toEqual(headings);
  expect(headings).toContain("Erase everything");
  expect(window.location.hash).toBe("#/data");
});
