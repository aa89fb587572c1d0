import { fireEvent, screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { entryField, lapRows, openWith, renderLog, runBlock } from "../../../support/logPage.tsx";

/** The key as each order of engines sends it: inside the composition, or after its end with the code 229. */
const orders = [
  ["while composing", { isComposing: true, keyCode: 13 }],
  ["after the composition has ended", { isComposing: false, keyCode: 229 }],
] as const;

describe.each(orders)("a key that takes or leaves a reading, %s", (_, key) => {
  it("neither adds the lap of the entry line nor empties the line", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    const field = await entryField();
    await user.type(field, "1:24.800 / おそい");
    fireEvent.keyDown(field, { key: "Escape", ...key });
    expect(field).toHaveValue("1:24.800 / おそい");
    fireEvent.keyDown(field, { key: "Enter", ...key });
    expect(field).toHaveValue("1:24.800 / おそい");
    fireEvent.keyUp(field, { key: "Enter", keyCode: 13 });
    await user.keyboard("{Enter}");
    await screen.findByRole("button", { name: /^Edit lap 2:/ });
    expect(lapRows(1)).toHaveLength(2);
  });

  it("neither stores the lap being edited nor throws away what was typed", async () => {
    const { user } = await renderLog((book) => openWith(book, [84_700]));
    await user.click(await screen.findByRole("button", { name: /^Edit lap 1:/ }));
    const field = await screen.findByRole("textbox", { name: "Lap 1" });
    await user.clear(field);
    await user.type(field, "1:24.700 / おそい");
    for (const name of ["Escape", "Enter"]) {
      fireEvent.keyDown(field, { key: name, ...key });
      expect(screen.getByRole("textbox", { name: "Lap 1" })).toHaveValue("1:24.700 / おそい");
    }
    fireEvent.keyUp(field, { key: "Enter", keyCode: 13 });
    await user.keyboard("{Enter}");
    expect(await runBlock(1).findByText(/おそい/)).toBeVisible();
  });
});
