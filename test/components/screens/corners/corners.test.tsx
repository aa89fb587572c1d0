import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, addLap, addRun, combosWithNames, editLayout, type Logbook, startSession } from "#db";
import type { Layout } from "#domain";
import { useRows } from "#live";
import { CornersScreen } from "../../../../src/screens/corners/CornersScreen.tsx";
import { aLap } from "../../../support/aLap.ts";
import { renderAt } from "../../../support/renderAt.tsx";

let layout: Layout | undefined;
/** The screen, and the layout behind it as it is in the logbook. */
function Peek() {
  layout = useRows(combosWithNames, [])?.[0]?.layout;
  return <CornersScreen />;
}
const aCombo =
  (track = "Varnholt Ring") =>
  (book: Logbook) =>
    addCombo(book, { car: { name: "Club hatch" }, track: { name: track } });
const open = async (user: Awaited<ReturnType<typeof renderAt>>["user"]) =>
  user.click(await screen.findByRole("link", { name: /Club hatch/ }));

describe("corners", () => {
  it("says where combos come from when there is none", async () => {
    await renderAt("#/corners", <CornersScreen />);
    expect(await screen.findByRole("heading", { name: "No combo yet" })).toBeVisible();
    expect(screen.getByRole("link", { name: "Log" })).toHaveAttribute("href", "#/log");
  });

  it("numbers the corners at once, and takes it back", async () => {
    const { user } = await renderAt("#/corners", <CornersScreen />, aCombo());
    await open(user);
    const field = await screen.findByRole("textbox", { name: "Corners of a lap" });
    await user.type(field, "twelve{Enter}");
    expect(field).toHaveAccessibleDescription(/“twelve” is not a number\. Write a whole number from 1 to 99/);
    await user.clear(field);
    await user.type(field, "12{Enter}");
    const table = await screen.findByRole("table", { name: "Corners of the layout" });
    expect(within(table).getAllByRole("row")).toHaveLength(13);
    await user.click(screen.getByRole("button", { name: "Undo" }));
    expect(await screen.findByRole("textbox", { name: "Corners of a lap" })).toBeVisible();
  });

  it("edits one corner in its row, with a comma, and gives the focus back", async () => {
    const { user } = await renderAt("#/corners", <Peek />, aCombo());
    await open(user);
    await user.type(await screen.findByRole("textbox", { name: "Corners of a lap" }), "2{Enter}");
    await user.click(await screen.findByRole("button", { name: "Edit corner 2" }));
    const name = screen.getByRole("textbox", { name: "Name of corner 2" });
    expect(name).toHaveFocus();
    await user.type(name, "Church");
    await user.click(screen.getByRole("radio", { name: "right" }));
    await user.type(screen.getByRole("textbox", { name: "Radius" }), "42,5 m");
    await user.type(screen.getByRole("textbox", { name: "Angle" }), "95{Enter}");
    const button = await screen.findByRole("button", { name: "Edit corner 2 Church" });
    await waitFor(() => expect(button).toHaveFocus());
    expect(screen.getByRole("row", { name: /Church/ })).toHaveTextContent("right42.595");
    expect(layout?.corners[1]).toEqual({
      number: 2,
      name: "Church",
      direction: "right",
      radius: 42.5,
      angle: 95,
    });
  });

  it("keeps a wrong figure in its field, and leaves the corner alone on Escape", async () => {
    const { user } = await renderAt("#/corners", <Peek />, aCombo());
    await open(user);
    await user.type(await screen.findByRole("textbox", { name: "Corners of a lap" }), "1{Enter}");
    await user.click(await screen.findByRole("button", { name: "Edit corner 1" }));
    const width = screen.getByRole("textbox", { name: "Width" });
    await user.type(width, "wide{Enter}");
    expect(width).toHaveAccessibleDescription(
      "Width: “wide” is not a number. Write a number from 1 to 100 m.",
    );
    expect(width).toHaveValue("wide");
    await user.click(screen.getByRole("textbox", { name: "Name of corner 1" }));
    await user.paste("x".repeat(500));
    expect(screen.getByRole("textbox", { name: "Name of corner 1" })).toHaveAccessibleDescription(
      /500 signs/,
    );
    await user.keyboard("{Escape}");
    expect(await screen.findByRole("button", { name: "Edit corner 1" })).toBeVisible();
    expect(layout?.corners).toEqual([{ number: 1 }]);
  });

  it("adds and removes single corners", async () => {
    const { user } = await renderAt("#/corners", <CornersScreen />, aCombo());
    await open(user);
    await user.type(await screen.findByRole("textbox", { name: "Corners of a lap" }), "1{Enter}");
    await user.click(await screen.findByRole("button", { name: "Add corner 2" }));
    await user.click(await screen.findByRole("button", { name: "Remove corner 2" }));
    await waitFor(() => expect(screen.queryByRole("button", { name: "Edit corner 2" })).toBeNull());
    expect(await screen.findByRole("button", { name: "Add corner 2" })).toBeVisible();
  });

  it("stores length and sectors when the field is left", async () => {
    const { user, reload } = await renderAt("#/corners", <Peek />, aCombo());
    await open(user);
    await user.type(await screen.findByRole("textbox", { name: "Length of a lap" }), "3.62 km");
    await user.tab();
    await waitFor(() => expect(layout?.length).toBe(3620));
    const sectors = screen.getByRole("textbox", { name: "Sectors the simulator times" });
    await user.type(sectors, "2,5");
    await user.tab();
    expect(sectors).toHaveAccessibleDescription(/2,5 is not a whole number/);
    reload();
    expect(await screen.findByDisplayValue("3620")).toBeVisible();
    expect(await screen.findByDisplayValue("2,5")).toBeVisible();
    expect(layout?.sectors).toBeUndefined();
  });
});

describe("corners named in remarks", () => {
  const driven = async (book: Logbook) => {
    const { comboId } = await aCombo("<b>Fen</b> \u202Ereversed")(book);
    const found = (await combosWithNames(book))[0]?.layout;
    if (found === undefined) throw new Error("no layout");
    await editLayout(book, { layoutId: found.id, patch: { corners: [{ number: 5, name: "Church" }] } });
    const { runId, sessionId } = await startSession(book, {
      comboId,
      date: "2026-11-25",
      zone: "Europe/Berlin",
    });
    const add = (run: string, ...remarks: NonNullable<Parameters<typeof aLap>[1]>["remarks"][]) =>
      Promise.all(
        remarks.map((some = []) =>
          addLap(book, { runId: run, id: book.newId(), lap: aLap(83_000, { remarks: some }) }),
        ),
      );
    await add(
      runId,
      [{ kind: "off", corner: 5 }],
      [
        { kind: "off", corner: 5 },
        { kind: "cut", corner: 2 },
      ],
      [{ kind: "spin" }],
      [],
    );
    const guest = await addRun(book, { sessionId, settings: { guest: "A friend" } });
    await add(guest.runId, [{ kind: "spin", corner: 9 }]);
  };

  it("are counted with the number of laps looked at, without a guest’s", async () => {
    const { user } = await renderAt("#/corners", <CornersScreen />, driven);
    await open(user);
    expect(await screen.findByText("Most at corner 5: 2 of 3 mistakes and cuts")).toBeVisible();
    expect(screen.getByRole("img", { name: /^Mistakes and cuts by corner/ })).toHaveAccessibleName(
      "Mistakes and cuts by corner: corner 5: 2 off; corner 2: 1 cut",
    );
    expect(
      within(screen.getByRole("list", { name: "What the marks are" })).getAllByRole("listitem"),
    ).toHaveLength(2);
    await user.click(screen.getByRole("button", { name: /^All remarks, counted/ }));
    const table = await screen.findByRole("table", { name: "Corners named in 4 laps of one session" });
    const rows = within(table)
      .getAllByRole("row")
      .map((row) => row.textContent);
    expect(rows).toEqual(["cornercutoffin all", "5 Church22", "211"]);
    expect(screen.getByText("<b>Fen</b> \u202Ereversed").tagName).toBe("BDI");
  });
});
