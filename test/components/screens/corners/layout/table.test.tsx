import { screen, waitFor, within } from "@testing-library/react";
import { beforeEach, describe, expect, it } from "vitest";
import { editCorners } from "#db";
import { renderAt } from "../../../../support/renderAt.tsx";
import { aLayout, onADesk, stored, TheLayout } from "./aLayout.tsx";

beforeEach(onADesk);

const cell = (name: string) => screen.findByRole("textbox", { name });
const corners = () => stored.combo?.layout.corners;
const rows = () =>
  within(screen.getByRole("table", { name: /^Corners of the layout/ }))
    .getAllByRole("row")
    .slice(1);

describe("the table of a layout's corners", () => {
  it("begins with how many there are, numbers them and takes it back", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout());
    const field = await screen.findByRole("textbox", { name: "Corners of a lap" });
    await user.type(field, "twelve{Enter}");
    expect(field).toHaveAccessibleDescription(/“twelve” is not a number\. Write a whole number from 1 to 99/);
    await user.clear(field);
    await user.type(field, "12{Enter}");
    await waitFor(() => expect(corners()).toHaveLength(12));
    expect(rows()).toHaveLength(13);
    await waitFor(async () => expect(await cell("Name, corner 1")).toHaveFocus());
    await user.click(screen.getByRole("button", { name: "Undo" }));
    expect(await screen.findByRole("textbox", { name: "Corners of a lap" })).toBeVisible();
  });

  it("is filled in from row to row by the keyboard alone, each row one write", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout());
    await user.click(await cell("Turns, corner 1"));
    await user.keyboard("r{Tab}h{Tab}250{Enter}l{Tab}f{Tab}n{Enter}");
    expect(await cell("Turns, corner 3")).toHaveFocus();
    await user.keyboard("r{Enter}");
    await waitFor(() =>
      expect(corners()).toEqual([
        { number: 1, direction: "right", bend: "hairpin", afterLength: 250 },
        { number: 2, direction: "left", bend: "fast", after: "none" },
        { number: 3, direction: "right" },
      ]),
    );
    expect(await cell("Turns, corner 4")).toHaveFocus();
    expect(await screen.findByDisplayValue("hairpin")).toHaveAccessibleName("Kind of bend, corner 1");
    expect(screen.getByDisplayValue("250 m")).toHaveAccessibleName("What follows, corner 1");
    await user.click(screen.getByRole("button", { name: "Undo" }));
    await waitFor(() => expect(corners()).toHaveLength(2));
  });

  it("says beside a shortened word what it was read as", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1 }]));
    const kind = await cell("Kind of bend, corner 1");
    await user.type(kind, "h");
    expect(kind).toHaveAccessibleDescription("read as hairpin");
    await user.keyboard("airpin");
    expect(kind).not.toHaveAccessibleDescription();
    expect(corners()).toEqual([{ number: 1 }]);
  });

  it("keeps what cannot be read at its cell, over a reload too, and says what would be right", async () => {
    const { user, reload } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1 }]));
    await user.type(await cell("Kind of bend, corner 1"), "twisty");
    const wrong = () => screen.queryByText(/“twisty” is none of the words it may be/);
    expect(wrong()).toBeNull();
    await user.keyboard("{Enter}");
    expect(await cell("Kind of bend, corner 1")).toHaveFocus();
    expect(await cell("Kind of bend, corner 1")).toHaveAccessibleDescription(
      "Kind of bend: “twisty” is none of the words it may be. Write hairpin, slow, middling, fast or kink.",
    );
    await user.type(await cell("Turns, corner 1"), "l");
    await user.click(await cell("Name, corner 2"));
    reload();
    expect(await screen.findByDisplayValue("twisty")).toBeInvalid();
    expect(wrong()).toBeVisible();
    expect(corners()).toEqual([{ number: 1 }]);
    await user.clear(await cell("Kind of bend, corner 1"));
    await user.keyboard("s{Enter}");
    await waitFor(() => expect(corners()).toEqual([{ number: 1, direction: "left", bend: "slow" }]));
  });

  it("is walked with the arrow keys, and a cell is put back by Escape", async () => {
    const { user } = await renderAt(
      "#/corners",
      <TheLayout />,
      aLayout([
        { number: 1, name: "Mill" },
        { number: 2, direction: "left" },
      ]),
    );
    await user.click(await cell("Name, corner 1"));
    await user.keyboard("{ArrowDown}");
    expect(await cell("Name, corner 2")).toHaveFocus();
    await user.keyboard("{ArrowRight}");
    expect(await cell("Turns, corner 2")).toHaveFocus();
    await user.keyboard("x");
    await user.keyboard("{Escape}");
    expect(await cell("Turns, corner 2")).toHaveValue("left");
    await user.keyboard("{ArrowUp}");
    expect(await cell("Turns, corner 1")).toHaveFocus();
    await user.keyboard("{ArrowLeft}{ArrowLeft}");
    expect(await cell("Name, corner 1")).toHaveFocus();
    expect(corners()).toEqual([
      { number: 1, name: "Mill" },
      { number: 2, direction: "left" },
    ]);
  });

  it("takes a corner with any free number, and one that is nothing but its number", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1 }, { number: 3 }]));
    await user.tripleClick(await cell("Number, new corner"));
    await user.keyboard("3{Enter}");
    expect(await screen.findByText("Corner 3 is there already. Write another number.")).toBeVisible();
    await user.tripleClick(
      (await screen.findAllByRole("textbox", { name: "Number, new corner" }))[0] as HTMLElement,
    );
    await user.keyboard("2{Enter}");
    await waitFor(() => expect(corners()).toEqual([{ number: 1 }, { number: 2 }, { number: 3 }]));
    await user.click(await cell("Number, new corner"));
    await user.keyboard("{Enter}");
    await waitFor(() => expect(corners()).toHaveLength(4));
    await waitFor(() => expect(screen.getByDisplayValue("5")).toHaveFocus());
  });

  it("removes a corner and brings it back", async () => {
    const { user } = await renderAt(
      "#/corners",
      <TheLayout />,
      aLayout([{ number: 1 }, { number: 2, name: "Mill" }]),
    );
    await user.click(await screen.findByRole("button", { name: "Remove corner 2" }));
    await waitFor(() => expect(corners()).toEqual([{ number: 1 }]));
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    expect(await screen.findByDisplayValue("Mill")).toBeVisible();
  });

  it("shows measured values only where there are any, until they are asked for", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1, radius: 40 }]));
    expect(await cell("Radius, corner 1")).toHaveValue("40");
    expect(screen.queryByRole("textbox", { name: "Width, corner 1" })).toBeNull();
    await user.click(screen.getByRole("button", { name: "Show measured values" }));
    await user.type(await cell("Lowest speed, corner 1"), "25 m/s");
    await user.type(await cell("Width, corner 1"), "1");
    await user.type(await cell("Kerb at exit, corner 1"), "1,5{Enter}");
    expect(await screen.findByText(/Width: 1 m is no wider than the car/)).toBeVisible();
    await user.type(await cell("Width, corner 1"), "2{Enter}");
    await waitFor(() =>
      expect(corners()).toEqual([{ number: 1, radius: 40, width: 12, kerbs: { exit: 1.5 } }]),
    );
    expect(stored.combo?.combo.lowestSpeeds).toEqual([{ number: 1, speed: 25 }]);
    expect(await cell("Lowest speed, corner 1")).toHaveValue("90");
    await user.click(screen.getByRole("button", { name: "Hide empty columns" }));
    expect(screen.queryByRole("textbox", { name: "Angle, corner 1" })).toBeNull();
    expect(await cell("Width, corner 1")).toBeVisible();
  });

  it("leaves alone what is typed in one row while another tab changes the layout", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1 }, { number: 2 }]));
    await user.type(await cell("Name, corner 1"), "Mill");
    const { combo, book } = stored;
    if (combo === undefined || book === undefined) throw new Error("nothing drawn");
    await editCorners(book, {
      layoutId: combo.layout.id,
      corners: [{ number: 1, patch: { bend: "kink" } }],
    });
    expect(await cell("Name, corner 1")).toHaveValue("Mill");
    await user.keyboard("{Enter}");
    await waitFor(() =>
      expect(corners()).toEqual([{ number: 1, name: "Mill", bend: "kink" }, { number: 2 }]),
    );
  });
});
