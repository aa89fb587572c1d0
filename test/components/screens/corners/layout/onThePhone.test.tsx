import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { renderAt } from "../../../../support/renderAt.tsx";
import { aLayout, stored, TheLayout } from "./aLayout.tsx";

const corners = () => stored.combo?.layout.corners;
const openCorner = (name: RegExp) => screen.findByRole("button", { name });

describe("the corners of a layout on a phone", () => {
  it("open from their numbers, one at a time, and go on to the next", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1 }, { number: 2 }]));
    await user.click(await openCorner(/^1/));
    const form = await screen.findByRole("form", { name: "Corner 1" });
    await user.click(within(form).getByRole("radio", { name: "right" }));
    await user.click(within(form).getByRole("radio", { name: "hairpin" }));
    await user.type(within(form).getByRole("textbox", { name: "Or its length" }), "250");
    await user.click(within(form).getByRole("button", { name: "Next corner" }));
    expect(await screen.findByRole("form", { name: "Corner 2" })).toBeVisible();
    expect(screen.queryByRole("form", { name: "Corner 1" })).toBeNull();
    await waitFor(async () => expect(await openCorner(/^2/)).toHaveFocus());
    await waitFor(() =>
      expect(corners()?.[0]).toEqual({ number: 1, direction: "right", bend: "hairpin", afterLength: 250 }),
    );
    expect(await openCorner(/^1/)).toHaveTextContent("1right · hairpin · then 250 m");
  });

  it("are stored when another one is opened, and say what could not be", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1 }, { number: 2 }]));
    await user.click(await openCorner(/^1/));
    await user.type(await screen.findByRole("textbox", { name: "Name" }), "Mill");
    await user.click(await openCorner(/^2/));
    await waitFor(() => expect(corners()?.[0]).toEqual({ number: 1, name: "Mill" }));
    await user.type(await screen.findByRole("textbox", { name: "Sector" }), "9");
    await user.click(screen.getByRole("button", { name: "Next corner" }));
    expect(screen.getByRole("textbox", { name: "Sector" })).toHaveAccessibleDescription(
      "Sector: 9 is more than there are. This layout has 3.",
    );
    await user.click(screen.getByRole("button", { name: "Done" }));
    expect(await screen.findByText(/^Not stored\. Sector: 9 is more than there are/)).toBeVisible();
    expect(corners()?.[1]).toEqual({ number: 2 });
  });

  it("are added at the end, and removed", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1 }]));
    await user.click(await openCorner(/^Add corner 2/));
    await user.click(await screen.findByRole("button", { name: "Next corner" }));
    await waitFor(() => expect(corners()).toEqual([{ number: 1 }, { number: 2 }]));
    await user.click(await openCorner(/^2/));
    await user.click(await screen.findByRole("button", { name: "Remove" }));
    await waitFor(() => expect(corners()).toEqual([{ number: 1 }]));
    expect(screen.queryByRole("form")).toBeNull();
  });

  it("hold measured values behind a fold that says they are there", async () => {
    const { user } = await renderAt("#/corners", <TheLayout />, aLayout([{ number: 1 }]));
    await user.click(await openCorner(/^1/));
    expect(screen.queryByRole("textbox", { name: "Lowest speed" })).toBeNull();
    await user.click(screen.getByRole("button", { name: /^Measured values/ }));
    await user.type(screen.getByRole("textbox", { name: "Lowest speed" }), "90");
    await user.click(screen.getByRole("button", { name: "Done" }));
    await waitFor(() => expect(stored.combo?.combo.lowestSpeeds).toEqual([{ number: 1, speed: 25 }]));
  });
});
