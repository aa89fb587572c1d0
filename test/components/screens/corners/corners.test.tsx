import { screen, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, addLap, addRun, combosWithNames, editLayout, type Logbook, startSession } from "#db";
import { CornersScreen } from "../../../../src/screens/corners/CornersScreen.tsx";
import { aLap } from "../../../support/aLap.ts";
import { renderAt } from "../../../support/renderAt.tsx";

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
