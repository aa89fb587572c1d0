import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import {
  addCombo,
  addCornerReview,
  addLap,
  addRun,
  combosWithNames,
  editLayout,
  type Logbook,
  setCount,
  startSession,
} from "#db";
import type { Corner } from "#domain";
import { CornersScreen } from "../../../../src/screens/corners/CornersScreen.tsx";
import { aLap } from "../../../support/aLap.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const aCombo = (book: Logbook, track = "Varnholt Ring", car = "Club hatch") =>
  addCombo(book, { car: { name: car }, track: { name: track } });

/** An evening: nine even laps, and after them those with remarks. */
async function driven(book: Logbook, track?: string) {
  const { comboId } = await aCombo(book, track);
  const layout = (await combosWithNames(book)).find(({ combo }) => combo.id === comboId)?.layout;
  if (layout === undefined) throw new Error("no layout");
  const corners = [
    { number: 4, after: "middling" as const },
    { number: 5, name: "Church", bend: "slow" as const, after: "long" as const, direction: "left" as const },
  ];
  await editLayout(book, { layoutId: layout.id, patch: { corners } });
  const { runId, sessionId } = await startSession(book, {
    comboId,
    date: "2026-11-25",
    zone: "Europe/Berlin",
  });
  const add = (run: string, ms: number, remarks: NonNullable<Parameters<typeof aLap>[1]>["remarks"] = []) =>
    addLap(book, { runId: run, id: book.newId(), lap: aLap(ms, { remarks }) });
  for (let lap = 0; lap < 9; lap++) await add(runId, 83_000);
  await add(runId, 84_000, [{ kind: "off", corner: 5 }]);
  await add(runId, 83_000, [{ kind: "cut", corner: 2 }]);
  const guest = await addRun(book, { sessionId, settings: { guest: "A friend" } });
  await add(guest.runId, 90_000, [{ kind: "spin", corner: 9 }]);
  return { comboId, sessionId };
}

/** The same with what a replay showed. */
async function reviewed(book: Logbook) {
  const made = await driven(book);
  await addCornerReview(book, {
    comboId: made.comboId,
    on: "2026-11-25",
    corners: [{ number: 5, entry: 0.9, apex: 0, exit: 1.8, braking: "late" }],
  });
  return made;
}

/** Something else is known of a corner. */
async function know(book: Logbook, comboId: string, number: number, known: Partial<Corner>) {
  const layout = (await combosWithNames(book)).find(({ combo }) => combo.id === comboId)?.layout;
  if (layout === undefined) throw new Error("no layout");
  const corners = layout.corners.map((corner) =>
    corner.number === number ? { ...corner, ...known } : corner,
  );
  await editLayout(book, { layoutId: layout.id, patch: { corners } });
}

describe("corners", () => {
  it("says where combos come from when there is none", async () => {
    await renderAt("#/corners", <CornersScreen />);
    expect(await screen.findByRole("heading", { name: "No combo yet" })).toBeVisible();
    expect(screen.getByRole("link", { name: "Log" })).toHaveAttribute("href", "#/log");
  });

  it("opens on the combo driven last, and leads to another", async () => {
    const { user } = await renderAt("#/corners", <CornersScreen />, async (book) => {
      await aCombo(book, "Tessemoor");
      await driven(book);
    });
    expect(await screen.findByRole("heading", { level: 1, name: /Varnholt Ring/ })).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Another combo" }));
    await user.click(screen.getByRole("link", { name: /Tessemoor/ }));
    expect(await screen.findByRole("heading", { level: 1, name: /Tessemoor/ })).toBeVisible();
  });

  it("without anything known asks for a minute at a replay, and says why", async () => {
    await renderAt("#/corners", <CornersScreen />, aCombo);
    expect(
      await screen.findByRole("heading", { name: "Which corner first cannot be told yet" }),
    ).toBeVisible();
    expect(screen.getByText(/^Look at three corners in a replay: it takes a minute\./)).toBeVisible();
    expect(screen.getByRole("link", { name: "Look at corners in a replay" })).toHaveAttribute(
      "href",
      expect.stringMatching(/\?part=review$/),
    );
    expect(screen.getByText("No lap of this combo has been written down yet.")).toBeVisible();
  });

  it("a combo that is not there leads to one that is", async () => {
    await renderAt("#/corners/01a05e0d-8720-73a0-9da3-000000000000", <CornersScreen />, driven);
    expect(await screen.findByRole("heading", { name: "This combo is not there" })).toBeVisible();
  });
});

describe("which corner first", () => {
  it("is told by remarks alone: one second lost in ten laps is about 0.10 s a lap", async () => {
    await renderAt("#/corners", <CornersScreen />, driven);
    expect(await screen.findByRole("heading", { name: "Corner 5 first: about 0.10 s a lap" })).toBeVisible();
    expect(screen.getByText(/Its line has not been looked at in a replay\.$/)).toBeVisible();
    const order = screen.getByRole("list", { name: "Corners in order of seconds" });
    expect(
      within(order)
        .getAllByRole("listitem")
        .map((row) => row.textContent),
    ).toEqual(["Corner 5Churchabout 0.10 s 0.02 to 0.36 s1 off"]);
  });

  it("counts the remarks with the number of laps looked at, without a guest’s", async () => {
    const track = "<b>Fen</b> \u202Ereversed";
    const { user } = await renderAt("#/corners", <CornersScreen />, (book) => driven(book, track));
    expect(await screen.findByText("As many at each: corners 2 and 5, 1 each")).toBeVisible();
    await user.click(screen.getByRole("button", { name: /^All of them, counted/ }));
    const table = await screen.findByRole("table", { name: "Corners named in 11 laps of one session" });
    const rows = within(table)
      .getAllByRole("row")
      .map((row) => row.textContent);
    expect(rows).toEqual(["cornercutoffin all", "2 11", "5 Church11"]);
    expect(screen.getByText(`${track} · Club hatch`).tagName).toBe("BDI");
  });

  it("adds what a replay showed, and leads by its number to the corner itself", async () => {
    const { user } = await renderAt("#/corners", <CornersScreen />, reviewed);
    expect(
      await screen.findByRole("heading", { name: /^Corner 5 first: about 0\.\d\d s a lap$/ }),
    ).toBeVisible();
    expect(screen.getByText(/A long straight follows; .*left at exit/)).toBeVisible();
    const row = screen.getByRole("list", { name: "Corners in lap order" });
    expect(
      within(row)
        .getAllByRole("link")
        .map((link) => link.textContent?.match(/^\d/)?.[0]),
    ).toEqual(["2", "4", "5"]);
    await user.click(
      within(row).getByRole("link", { name: /^Corner 5 Church, about 0\.\d\d s a lap, 1 off$/ }),
    );
    expect(
      await screen.findByRole("heading", {
        name: /^About 0\.\d\d s a lap: road left unused 0\.\d\d s, mistakes 0\.10 s$/,
      }),
    ).toBeVisible();
    expect(screen.getByRole("img", { name: /turning left .*: as driven arcs of/ })).toBeVisible();
    expect(screen.getByText("Braking late in 1 of 1 review.")).toBeVisible();
    expect(screen.getByRole("figure", { name: /apex/ })).toBeVisible();
  });

  it("marks in its drawing where the apex is best, where that is not in the middle", async () => {
    await renderAt("#/corners", <CornersScreen />, async (book) => {
      const { comboId } = await reviewed(book);
      await know(book, comboId, 5, { bend: "hairpin", after: "long" });
      window.location.hash = `#/corners/${comboId}?corner=5`;
    });
    const lines = await screen.findByRole("list", { name: "What the lines are" });
    expect(within(lines).getByText("best place for the apex, see below")).toBeVisible();
    expect(screen.getByRole("img", { name: /the apex is best after \d\d % of the turn\.$/ })).toBeVisible();
    expect(screen.getByRole("heading", { name: /^A late apex is best/ })).toBeVisible();
  });

  it("says of a corner of a chain that there is no straight to trade with, and which it is joined to", async () => {
    const { user } = await renderAt("#/corners", <CornersScreen />, async (book) => {
      const { comboId } = await reviewed(book);
      await know(book, comboId, 4, { after: "none" });
      window.location.hash = `#/corners/${comboId}?corner=4`;
    });
    expect(await screen.findByText(/^Joined to corner 5 after it: there is no straight/)).toBeVisible();
    expect(
      within(screen.getByRole("list", { name: "What the lines are" })).queryByText(/best place/),
    ).toBeNull();
    await user.click(screen.getByRole("link", { name: "Corner 5" }));
    expect(await screen.findByText(/^Joined to corner 4 before it: there is no straight/)).toBeVisible();
  });

  it("lets corners be chosen in its row, with which tonight’s review begins", async () => {
    const { user } = await renderAt("#/corners", <CornersScreen />, reviewed);
    await user.click(await screen.findByRole("button", { name: "Choose for tonight’s review" }));
    const row = screen.getByRole("list", { name: "Corners in lap order" });
    expect(within(row).queryByRole("link")).toBeNull();
    await user.click(within(row).getByRole("button", { name: /^Corner 4/ }));
    await user.click(within(row).getByRole("button", { name: /^Corner 2/ }));
    expect(within(row).getByRole("button", { name: /^Corner 4/, pressed: true })).toBeVisible();
    expect(screen.getByText("Tonight: corners 2 and 4")).toBeVisible();
    await user.click(within(row).getByRole("button", { name: /^Corner 2/ }));
    await user.click(screen.getByRole("button", { name: "Done" }));
    expect(within(row).getAllByRole("link")).toHaveLength(3);
    await user.click(screen.getByRole("link", { name: "Replay review" }));
    expect(await screen.findByText(/^the usual lap · corner 4 · /)).toBeVisible();
  });

  it("says one click away what a corner’s seconds rest on", async () => {
    const { user } = await renderAt("#/corners", <CornersScreen />, async (book) => {
      const { comboId } = await reviewed(book);
      window.location.hash = `#/corners/${comboId}?corner=5`;
    });
    await user.click(await screen.findByRole("button", { name: /^What this rests on/ }));
    expect(screen.getByText("road: 11 m wide")).toBeVisible();
    expect(screen.getByText(/^with each gap misjudged by a quarter of a car: /)).toBeVisible();
    const speed = screen.getByRole("textbox", { name: "Lowest speed seen here" });
    await user.type(speed, "50 mph{Enter}");
    await waitFor(async () =>
      expect(screen.getByRole("button", { name: /^What this rests on/ })).not.toHaveTextContent("radius"),
    );
    expect(screen.queryByText(/^radius of the inner edge: /)).toBeNull();
    await user.click(screen.getByRole("link", { name: "Corner 4" }));
    await waitFor(() => expect(screen.getByText(/^Corner 4/, { selector: "p" })).toBeVisible());
    expect(screen.getByRole("heading", { name: "What its line gives away is not known yet" })).toBeVisible();
  });

  it("shows the drills counted at a corner by week, and whether its remarks and the lap times followed", async () => {
    await renderAt("#/corners", <CornersScreen />, async (book) => {
      const { comboId, sessionId } = await driven(book);
      const { runId } = await addRun(book, { sessionId, settings: { kind: "drill" } });
      await setCount(book, { runId, drill: "traction", corner: 5, tries: 10, good: 7 });
      window.location.hash = `#/corners/${comboId}?corner=5`;
    });
    const name = /^7 of 10 exits without wheelspin: 70 %, between 44 and 88 %/;
    expect(await screen.findByRole("figure", { name })).toBeVisible();
    expect(screen.getByText(/^Whether mistakes there got fewer cannot be told yet/)).toBeVisible();
    expect(screen.getByText(/^Lap times: not enough sessions/)).toBeVisible();
  });

  it("a corner that is not in the layout leads back to all", async () => {
    await renderAt("#/corners", <CornersScreen />, async (book) => {
      const { comboId } = await driven(book);
      window.location.hash = `#/corners/${comboId}?corner=77`;
    });
    expect(await screen.findByText(/^There is no corner 77 in this layout\./)).toBeVisible();
  });
});
