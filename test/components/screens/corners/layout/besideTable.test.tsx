import { screen, waitFor, within } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { editCar, type Logbook } from "#db";
import { renderAt } from "../../../../support/renderAt.tsx";
import { aLayout, onADesk, stored, TheLayout } from "./aLayout.tsx";

beforeEach(onADesk);

const cell = (name: string) => screen.findByRole("textbox", { name });
const corners = () => stored.combo?.layout.corners;
const three = [{ number: 1 }, { number: 2 }, { number: 3 }];

describe("corners from a spreadsheet", () => {
  it("are shown as they were read, and stored and taken back in one go", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1, name: "Mill" }]));
    await user.click(await screen.findByRole("button", { name: "Paste from a spreadsheet" }));
    const dialog = screen.getByRole("dialog", { name: "Corners from a spreadsheet" });
    await user.click(within(dialog).getByRole("textbox", { name: "Rows of corners" }));
    await user.paste("corner\tkind\tafter\n1\th\t250\n2\ttwisty\tlong");
    expect(dialog).toHaveTextContent("1 corner read, something wrong in 1 line: it stays out whole.");
    expect(within(dialog).getByRole("table", { name: "Lines that stay out" })).toHaveTextContent(/“twisty”/);
    expect(within(dialog).getByRole("table", { name: "Read as" })).toHaveTextContent(
      "hairpin · what follows 250 m",
    );
    await user.click(within(dialog).getByRole("button", { name: "Store 1 corner" }));
    await waitFor(() =>
      expect(corners()).toEqual([{ number: 1, name: "Mill", bend: "hairpin", afterLength: 250 }]),
    );
    expect(screen.queryByRole("dialog")).toBeNull();
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    await waitFor(() => expect(corners()).toEqual([{ number: 1, name: "Mill" }]));
  });

  it("are recognised when they are pasted into a cell, and wait until they are decided about", async () => {
    const { user, reload } = await renderAt("#/corners", <TheLayout />, aLayout(three));
    await user.click(await cell("Name, corner 1"));
    await user.paste("1\tMill\n2\tChurch\n");
    expect(await screen.findByRole("button", { name: "Store 2 corners" })).toBeEnabled();
    await user.click(screen.getByRole("button", { name: "Decide later" }));
    reload();
    await user.click(await screen.findByRole("button", { name: "Paste from a spreadsheet" }));
    expect(await screen.findByRole("button", { name: "Store 2 corners" })).toBeEnabled();
    await user.click(screen.getByRole("button", { name: "Discard the text" }));
    expect(screen.getByRole("textbox", { name: "Rows of corners" })).toHaveValue("");
    expect(screen.getByRole("button", { name: "Store 0 corners" })).toBeDisabled();
  });

  it("stay text where one word is pasted into a cell", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout(three));
    await user.click(await cell("Name, corner 1"));
    await user.paste("Mill Hill\n");
    expect(screen.queryByRole("dialog")).toBeNull();
    expect(await cell("Name, corner 1")).toHaveValue("Mill Hill");
  });
});

describe("corners of another layout", () => {
  const two = async (book: Logbook) => {
    await aLayout([{ number: 1, name: "Mill" }, { number: 9 }])(book);
    await aLayout([{ number: 1, bend: "slow" }, { number: 2 }], "Tessemoor")(book);
  };

  it("fill in what is not known, or take the place of all, as it is said before", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, two);
    await user.click(await screen.findByRole("button", { name: "Copy from another layout" }));
    expect(await screen.findByRole("combobox", { name: "From" })).toHaveDisplayValue("Tessemoor: 2 corners");
    expect(
      screen.getByText(
        /1 corner will be added, and what is not known of one that both have will be filled in/,
      ),
    ).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Copy 2 corners" }));
    await waitFor(() =>
      expect(corners()).toEqual([{ number: 1, name: "Mill", bend: "slow" }, { number: 2 }, { number: 9 }]),
    );
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    await waitFor(() => expect(corners()).toEqual([{ number: 1, name: "Mill" }, { number: 9 }]));
    await user.click(screen.getByRole("button", { name: "Copy from another layout" }));
    await user.click(await screen.findByRole("radio", { name: "in place of all that is here" }));
    expect(screen.getByText(/2 corners will stand in place of the 2 here/)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Copy 2 corners" }));
    await waitFor(() => expect(corners()).toEqual([{ number: 1, bend: "slow" }, { number: 2 }]));
  });

  it("are not offered where no other layout has any", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout(three));
    await user.click(await screen.findByRole("button", { name: "Copy from another layout" }));
    expect(await screen.findByText("No other layout has corners yet.")).toBeVisible();
    expect(screen.queryByRole("button", { name: /^Copy \d/ })).toBeNull();
  });
});

describe("the layout and the car", () => {
  it("store length and sectors when the field is left", async () => {
    const { user, reload } = await renderAt("#/corners", <TheLayout />, aLayout());
    await user.type(await cell("Length of a lap"), "3.62 km");
    await user.tab();
    await waitFor(() => expect(stored.combo?.layout.length).toBe(3620));
    const sectors = screen.getByRole("textbox", { name: "Sectors the simulator times" });
    await user.clear(sectors);
    await user.type(sectors, "2,5");
    await user.tab();
    expect(sectors).toHaveAccessibleDescription(/2,5 is not a whole number/);
    reload();
    expect(await screen.findByDisplayValue("3620")).toBeVisible();
    expect(await screen.findByDisplayValue("2,5")).toBeVisible();
    expect(stored.combo?.layout.sectors).toBe(3);
  });

  it("fill in the sector of every corner from where the sectors begin", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout(three));
    const field = await cell("A sector begins with corner");
    await user.type(field, "2{Enter}");
    expect(field).toHaveAccessibleDescription(/3 sectors need 2 of them, not 1/);
    await user.type(field, ", 3{Enter}");
    await waitFor(() => expect(corners()?.map(({ sector }) => sector)).toEqual([1, 2, 3]));
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    await waitFor(() => expect(corners()).toEqual(three));
  });

  it("keep what is known of the car, in any unit, and say what is assumed instead", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 4, width: 2.5 }]));
    const width = await cell("Width of the car");
    expect(width).toHaveAccessibleDescription("empty: 1.8 m is assumed");
    await user.type(width, "3");
    await user.tab();
    expect(width).toHaveAccessibleDescription(/the road is 2\.5 m wide at corner 4/);
    await user.clear(width);
    await user.type(width, "190 cm");
    await user.tab();
    await user.type(await cell("Top speed"), "100 mph");
    await user.tab();
    await user.type(await cell("Braking"), "1 g");
    await user.tab();
    await waitFor(() =>
      expect(stored.combo?.car).toMatchObject({ width: 1.9, topSpeed: 44.704, braking: 9.80665 }),
    );
  });

  it("keep what another tab writes of the car meanwhile", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout());
    await user.type(await cell("Grip"), "1.2");
    const { combo, book } = stored;
    if (combo === undefined || book === undefined) throw new Error("nothing drawn");
    await editCar(book, { carId: combo.car.id, patch: { width: 1.7 } });
    await user.tab();
    await waitFor(() => expect(stored.combo?.car).toMatchObject({ grip: 1.2, width: 1.7 }));
  });
});
