import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, type Logbook, startSession } from "#db";
import { useUndo } from "#state/undo.ts";
import { addSessions } from "../../../support/addSessions.ts";
import { aCombo, entryField, renderLog } from "../../../support/logPage.tsx";
import { pick } from "../../../support/pick.ts";

/** A clock that can be right: on that of 25 November the form asks for the date. */
const wednesday = Date.UTC(2026, 11, 2, 18);

const car = () => screen.findByRole("combobox", { name: "Car" });
const track = () => screen.getByRole("combobox", { name: "Track layout" });
const start = () => screen.getByRole("button", { name: "Start the session" });

async function twoCombos(book: Logbook) {
  const comboId = await aCombo(book);
  const other = await addCombo(book, { car: { name: "endurance trainer" }, track: { name: "Tessemoor" } });
  await addSessions(book, comboId, [{ date: "2026-11-03", laps: [84_000] }]);
  await addSessions(book, other.comboId, [
    { date: "2026-11-10", laps: [91_000], note: "Brake earlier for corner 5" },
  ]);
}

describe("starting a session", () => {
  it("takes two fields, makes what is new, and stands ready for the first lap", async () => {
    const { user } = await renderLog(undefined, "#/log", wednesday);
    await user.type(await car(), "Club hatch");
    await user.type(track(), "Varnholt Ring");
    await user.click(start());
    expect(await screen.findByRole("heading", { name: "Varnholt Ring · Club hatch" })).toBeVisible();
    await waitFor(async () => expect(await entryField()).toHaveFocus());
    expect(screen.getByLabelText("Lap 1")).toHaveFocus();
    expect(window.location.hash).toMatch(/^#\/log\/[0-9a-f-]{36}$/);
  });

  it("Undo of a start takes the new car and track with it, and Redo brings them back", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    const type = async (field: HTMLElement, text: string) => {
      await user.clear(field);
      await user.type(field, text);
    };
    await type(await car(), "Kart");
    await type(track(), "Sand Hollow");
    await user.click(start());
    expect(await screen.findByRole("heading", { name: "Sand Hollow · Kart" })).toBeVisible();
    await useUndo.getState().undo();
    expect(await screen.findByRole("heading", { name: "Start a session" })).toBeVisible();
    expect(window.location.hash).toBe("#/log");
    await type(await car(), "Kart");
    expect(screen.getByRole("option", { name: "New car “Kart”" })).toBeVisible();
    await type(track(), "Sand Hollow");
    expect(screen.getByRole("option", { name: "New track “Sand Hollow”" })).toBeVisible();
    await useUndo.getState().redo();
    expect(await screen.findByRole("heading", { name: "Sand Hollow · Kart" })).toBeVisible();
  });

  it("offers the combo driven last and the note left for it", async () => {
    await renderLog(twoCombos, "#/log", wednesday);
    expect(await car()).toHaveValue("endurance trainer");
    expect(track()).toHaveValue("Tessemoor");
    expect(await screen.findByText("Brake earlier for corner 5")).toBeVisible();
  });

  it("goes on with the combo driven last at one press", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    const card = within(await screen.findByRole("region", { name: "Last time" }));
    expect(card.getByRole("heading", { name: "Tessemoor · endurance trainer" })).toBeVisible();
    expect(card.getByText("Brake earlier for corner 5")).toBeVisible();
    expect(await card.findByText("1:31.000")).toBeVisible();
    await user.click(card.getByRole("button", { name: "Same as last time" }));
    expect(await screen.findByRole("heading", { name: "Tessemoor · endurance trainer" })).toBeVisible();
    await waitFor(async () => expect(await entryField()).toHaveFocus());
  });

  it("starts with another combo driven lately at one press, and is back on Log once that is undone", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    const list = within(await screen.findByRole("list", { name: "Start with another combo" }));
    await user.click(await list.findByRole("button", { name: "Varnholt Ring · Club hatch, PB 1:24.000" }));
    expect(await screen.findByRole("heading", { name: "Varnholt Ring · Club hatch" })).toBeVisible();
    await entryField();
    await useUndo.getState().undo();
    expect(await screen.findByRole("button", { name: "Same as last time" })).toBeVisible();
    expect(window.location.hash).toBe("#/log");
  });

  it("shows every car and track at a press, whatever stands in the field, and all that fits what is typed", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await user.click(await car());
    expect(screen.getAllByRole("option").map(({ textContent }) => textContent)).toEqual([
      "endurance trainer",
      "Club hatch",
    ]);
    await user.keyboard("club");
    expect(await car()).toHaveValue("club");
    expect(screen.getAllByRole("option").map(({ textContent }) => textContent)).toEqual([
      "Club hatch",
      "New car “club”",
    ]);
  });

  it("belongs to the day it is pressed on, though the form has stood open since the day before", async () => {
    const { user, clock } = await renderLog(twoCombos, "#/log", wednesday);
    expect(await car()).toHaveValue("endurance trainer");
    clock.pass(24 * 3_600_000);
    await user.click(start());
    // At the head of its page; the combos driven last may name the day, too, before they give way to it.
    expect(await screen.findByText(/^Thursday 3 December/)).toBeVisible();
  });

  it("takes a name that differs in case or spaces for the old one", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await user.clear(await car());
    await user.type(await car(), "club  HATCH");
    await user.clear(track());
    await user.type(track(), "VARNHOLT RING");
    await user.click(start());
    expect(await screen.findByRole("heading", { name: "Varnholt Ring · Club hatch" })).toBeVisible();
  });

  it("asks whether a name with other accents is the old one, and takes the driver's word", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await user.clear(await car());
    await user.type(await car(), "Club hatch");
    await user.clear(track());
    await user.type(track(), "Várnholt Ring");
    expect(screen.getByText("Is this your", { exact: false })).toHaveTextContent(
      "Is this your Varnholt Ring?",
    );
    await user.click(start());
    expect(track()).toHaveAccessibleDescription(/This is nearly your Varnholt Ring\. Say below/);
    expect(track()).toHaveFocus();
    await user.click(screen.getByRole("button", { name: "Use that" }));
    expect(track()).toHaveValue("Varnholt Ring");
    expect(screen.queryByText("Is this your", { exact: false })).toBeNull();
    await user.click(start());
    expect(await screen.findByRole("heading", { name: "Varnholt Ring · Club hatch" })).toBeVisible();
  });

  it("makes a new one of a name with other accents when told so", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await user.clear(await car());
    await user.type(await car(), "Club hatch");
    await user.clear(track());
    await user.type(track(), "Várnholt Ring, shört");
    await user.click(screen.getByRole("button", { name: "Make a new one" }));
    await user.click(start());
    expect(await screen.findByRole("heading", { name: /^Várnholt Ring, shört · / })).toBeVisible();
  });

  it("leaves a field empty that the driver emptied", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await user.clear(await car());
    await user.clear(track());
    expect(await car()).toHaveValue("");
    expect(track()).toHaveValue("");
  });

  it("says at the field what is missing, and takes the focus there", async () => {
    const { user } = await renderLog(undefined, "#/log", wednesday);
    await user.type(await car(), "Club hatch");
    await user.click(start());
    expect(track()).toHaveAccessibleDescription(/The track layout needs a name/);
    await waitFor(() => expect(track()).toHaveFocus());
    expect(await car()).toHaveValue("Club hatch");
  });

  it("says what is wrong with the target, and what would be right", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await car();
    await user.click(screen.getByRole("button", { name: /^Focus, target/ }));
    await user.type(screen.getByLabelText("Target of the day"), "912");
    await user.click(start());
    expect(screen.getByLabelText("Target of the day")).toHaveAccessibleDescription(/Three digits alone/);
  });

  it("asks about a date after tomorrow before it starts, and about no other", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await car();
    await user.click(screen.getByRole("button", { name: /^Focus, target/ }));
    const date = screen.getByLabelText("Date, if it was not today");
    await user.type(date, "2036-03-04");
    await user.click(start());
    expect(
      await screen.findByText(/is dated Tue 4 Mar 2036, after tomorrow. Is the date right/),
    ).toBeVisible();
    await user.clear(date);
    expect(screen.queryByText(/after tomorrow/)).toBeNull();
    await user.type(date, "2036-03-05");
    await user.click(start());
    expect(await screen.findByText(/is dated Wed 5 Mar 2036, after tomorrow/)).toBeVisible();
    await user.click(start());
    expect(await screen.findByText(/^Wednesday 5 March/)).toBeVisible();
  });

  it("asks before it starts under a clock that cannot be right, and takes a right date from the driver unasked", async () => {
    const { user, clock } = await renderLog(twoCombos, "#/log", wednesday);
    await car();
    // Set back while the form stands open.
    clock.set(Date.UTC(2016, 6, 3, 18));
    await user.click(start());
    expect(
      await screen.findByText(
        /^This device’s clock says Sun 3 Jul 2016, which is before this version of Lap Ledger was made\. Set it right, or write the date/,
      ),
    ).toBeVisible();
    expect(window.location.hash).toBe("#/log");
    await user.click(screen.getByRole("button", { name: /^Focus, target/ }));
    await user.type(screen.getByLabelText("Date, if it was not today"), "2026-12-02");
    expect(screen.queryByText(/was made/)).toBeNull();
    await user.click(start());
    expect(await screen.findByText("Wednesday 2 December")).toBeVisible();
    expect(screen.queryByText(/Is the date right/)).toBeNull();
  });

  it("keeps the date of such a clock when pressed once more, and asks about it on the session's page and beside the form", async () => {
    const { user, clock, reload } = await renderLog(twoCombos, "#/log", Date.UTC(2016, 6, 3, 18));
    await car();
    await user.click(start());
    await screen.findByText(/Start the session once more to keep Sun 3 Jul 2016\.$/);
    await user.click(start());
    expect(await screen.findByText(/is dated Sun 3 Jul 2016 by a clock that stood wrong/)).toBeVisible();
    clock.set(wednesday);
    reload();
    await user.click(await screen.findByRole("button", { name: "Change date" }));
    const dialog = within(await screen.findByRole("dialog"));
    await user.clear(dialog.getByLabelText("Date"));
    await user.type(dialog.getByLabelText("Date"), "2026-12-01");
    await user.click(dialog.getByRole("button", { name: "Done" }));
    expect(await screen.findByText(/^Tuesday 1 December/)).toBeVisible();
    await waitFor(() => expect(screen.queryByText(/stood wrong/)).toBeNull());
  });

  it("names a session dated by such a clock beside the form until its date is changed", async () => {
    await renderLog(
      async (book) => {
        await twoCombos(book);
        const [combo] = await book.tables.combos.toArray();
        const early = Date.UTC(2016, 6, 3, 18);
        await startSession(
          { ...book, clock: () => early },
          { comboId: combo?.id ?? "", date: "2016-07-03", zone: "Europe/Berlin", endedAt: early },
        );
      },
      "#/log",
      wednesday,
    );
    const notice = await screen.findByText(/whose date is in doubt/);
    expect(within(notice).getByRole("link")).toBeVisible();
    expect(notice).toHaveTextContent(
      "1 session whose date is in doubt is left out: Sun 3 Jul 2016. Is its date right? Today is Wed 2 Dec 2026",
    );
  });

  it("keeps what was typed over a reload", async () => {
    const { user, reload } = await renderLog(undefined, "#/log", wednesday);
    await user.type(await car(), "Club ha");
    reload();
    await waitFor(async () => expect(await car()).toHaveValue("Club ha"));
  });

  it("carries focus, target and conditions into the session's head", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await car();
    await user.click(screen.getByRole("button", { name: /^Focus, target/ }));
    pick(screen.getByLabelText("Focus"), "braking");
    await user.type(screen.getByLabelText("Target of the day"), "1:31.000");
    await user.type(screen.getByLabelText("Conditions"), "hot track");
    await user.click(start());
    const about = await screen.findByText(/target of the day 1:31\.000/);
    expect(about).toHaveTextContent("focus: braking");
    expect(about).toHaveTextContent("hot track");
  });

  it("enters a session afterwards under its own date", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await car();
    await user.click(screen.getByRole("button", { name: /^Focus, target/ }));
    await user.type(screen.getByLabelText("Date, if it was not today"), "2026-11-20");
    await user.click(start());
    expect(await screen.findByText("Friday 20 November")).toBeVisible();
  });

  it("greets with the note left for this combo until the first lap is written", async () => {
    const { user } = await renderLog(twoCombos, "#/log", wednesday);
    await car();
    await user.click(start());
    const note = await screen.findByRole("region", { name: "Your note from last time" });
    expect(within(note).getByText("Brake earlier for corner 5")).toBeVisible();
    await user.type(await entryField(), "1:31.000{Enter}");
    await screen.findByRole("button", { name: /^Edit lap 1/ });
    expect(note).not.toBeInTheDocument();
  });
});
