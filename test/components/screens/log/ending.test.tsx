import { act, fireEvent, screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addLaps, addRun, endSession } from "#db";
import { addSessions } from "../../../support/addSessions.ts";
import { aLap } from "../../../support/aLap.ts";
import { aCombo, entryField, lapRows, openWith, renderLog } from "../../../support/logPage.tsx";

const hour = 3_600_000;
const oneLap = () => renderLog((book) => openWith(book, [84_700]));

/** The driver looks at the page again. */
const lookAgain = () => act(async () => void fireEvent(document, new Event("visibilitychange")));

/** The question, once the driver has looked at the page long enough for it to stand there. */
const asked = () =>
  waitFor(async () => {
    await lookAgain();
    return screen.getByText(/Is it over\?/);
  });

describe("ending a session", () => {
  it("keeps the note while it is typed, and greets with it next time", async () => {
    const { user, reload } = await oneLap();
    await entryField();
    await user.click(screen.getByRole("button", { name: "End session" }));
    await user.type(await screen.findByLabelText(/^Note to yourself/), "later at 5");
    await user.click(screen.getByRole("button", { name: "Not yet" }));
    reload();
    await user.click(await screen.findByRole("button", { name: "End session" }));
    const note = await screen.findByLabelText(/^Note to yourself/);
    await waitFor(() => expect(note).toHaveValue("later at 5"));
    await user.click(screen.getByRole("button", { name: "End the session" }));
    await user.click(await screen.findByRole("button", { name: "Back to Log" }));
    expect(await screen.findByRole("heading", { name: "Start a session" })).toBeVisible();
    const greeting = within(await screen.findByRole("region", { name: "Your note from last time" }));
    expect(greeting.getByText("later at 5")).toBeVisible();
  });

  it("stays on the session's page, also where the address named none, and the focus with it", async () => {
    const { user } = await oneLap();
    await entryField();
    await user.click(screen.getByRole("button", { name: "End session" }));
    await user.click(await screen.findByRole("button", { name: "End the session" }));
    expect(await screen.findByRole("button", { name: "Back to Log" })).toBeVisible();
    expect(window.location.hash).toMatch(/^#\/log\/[0-9a-f-]{36}$/);
    const heading = screen.getByRole("heading", { level: 1, name: "Varnholt Ring · Club hatch" });
    await waitFor(() => expect(heading).toHaveFocus());
  });

  it("goes on with run 1 where the end was a mistake", async () => {
    const { user } = await oneLap();
    await entryField();
    await user.click(screen.getByRole("button", { name: "End session" }));
    await user.click(await screen.findByRole("button", { name: "End the session" }));
    await user.click(await screen.findByRole("button", { name: "Go on with run 1" }));
    await user.type(await entryField(), "1:24.600{Enter}");
    await waitFor(() => expect(lapRows(1)).toHaveLength(2));
  });

  it("goes on with run 1 where the end of the run was one, and the empty run 2 is gone", async () => {
    const { user } = await oneLap();
    await entryField();
    await user.click(screen.getByRole("button", { name: "End run" }));
    await user.click(await screen.findByRole("button", { name: "Go on with run 1" }));
    await waitFor(() => expect(screen.queryByRole("region", { name: "Run 2" })).toBeNull());
    await user.type(await entryField(), "1:24.600{Enter}");
    await waitFor(() => expect(lapRows(1)).toHaveLength(2));
  });

  it("keeps the focus when the question after three idle hours ends it", async () => {
    const { user, clock } = await renderLog(async (book) => {
      const { comboId } = await openWith(book, [84_700]);
      await addSessions(book, comboId, [{ date: "2026-11-10", laps: [84_700] }]);
    });
    await entryField();
    clock.pass(4 * hour);
    await asked();
    await user.click(screen.getByRole("button", { name: "End it at its last lap" }));
    const heading = await screen.findByRole("heading", { name: "Start a session" });
    await waitFor(() => expect(heading).toHaveFocus());
  });

  it("shows the note on the ended session's page, and lets it go on", async () => {
    let sessionId = "";
    const { user } = await renderLog(async (book) => {
      const comboId = await aCombo(book);
      const past = { date: "2026-11-10", laps: [84_700], note: "later at 5" };
      [sessionId = ""] = await addSessions(book, comboId, [past]);
    });
    window.location.hash = `#/log/${sessionId}`;
    expect(await screen.findByText("later at 5")).toBeVisible();
    expect(screen.queryByRole("region", { name: "Entry" })).not.toBeInTheDocument();
    expect(lapRows(1)).toHaveLength(1);
    await user.click(screen.getByRole("button", { name: /^Go on with (run|this)/ }));
    expect(await screen.findByLabelText("Lap 2")).toBeVisible();
  });

  it("shows best and usual of all its runs together", async () => {
    let sessionId = "";
    await renderLog(async (book) => {
      const first = await openWith(book, [84_900, 84_700]);
      sessionId = first.sessionId;
      const { runId } = await addRun(book, { sessionId });
      await addLaps(book, { runId, laps: [{ id: book.newId(), lap: aLap(84_800) }] });
      await endSession(book, { sessionId });
    });
    window.location.hash = `#/log/${sessionId}`;
    const whole = within(await screen.findByRole("region", { name: "What the session says" }));
    expect(whole.getByText("2 runs, 3 laps")).toBeVisible();
    expect(whole.getByText("PB here now 1:24.700; 3 of 3 laps clean")).toBeVisible();
    expect(whole.getByRole("figure", { name: /^All runs: 3 laps/ })).toBeVisible();
    expect(whole.queryByText(/^Best run/)).not.toBeInTheDocument();
    expect(whole.getAllByRole("definition").map((value) => value.textContent)).toEqual([
      "1:24.700",
      "1:24.800",
      "the middle one of 3 pace laps",
      "—",
      expect.stringMatching(/needs/),
    ]);
  });
});

it("names the best run of an ended session, leads back first, and opens a lap from its strip", async () => {
  const laps = (usual: number) => [-200, 100, -50, 150, 0].map((ms) => usual + ms);
  let sessionId = "";
  const { user } = await renderLog(async (book) => {
    ({ sessionId } = await openWith(book, laps(84_400)));
    const { runId } = await addRun(book, { sessionId });
    await addLaps(book, { runId, laps: laps(84_100).map((ms) => ({ id: book.newId(), lap: aLap(ms) })) });
    await endSession(book, { sessionId });
  });
  window.location.hash = `#/log/${sessionId}`;
  const whole = within(await screen.findByRole("region", { name: "What the session says" }));
  expect(whole.getByText("Best run: run 2, usual lap 1:24.100.")).toBeVisible();
  const names = screen.getAllByRole("button").map((button) => button.textContent);
  const [goOn, summary, back] = ["Go on with run 2", "Summary run", "Back to Log"].map((name) =>
    names.indexOf(name),
  );
  expect([goOn, summary, back]).toEqual([goOn, (goOn ?? 0) + 1, (goOn ?? 0) + 2]);
  whole.getByRole("figure", { name: /^All runs: 10 laps/ }).focus();
  await user.keyboard("{End}{Enter}");
  expect(await screen.findByLabelText("Lap 5")).toHaveValue("1:24.100");
});

describe("an open session after three idle hours", () => {
  it("asks by itself, and ends at its last lap", async () => {
    const { user, clock } = await oneLap();
    await entryField();
    clock.pass(3 * hour - 1);
    await lookAgain();
    expect(screen.queryByText(/Is it over\?/)).not.toBeInTheDocument();
    clock.pass(1);
    expect(await asked()).toHaveTextContent("since Wednesday 25 November, 19:00. Is it over?");
    await user.click(screen.getByRole("button", { name: "End it at its last lap" }));
    expect(await screen.findByRole("heading", { name: "Start a session" })).toBeVisible();
  });

  it("takes the note to oneself, as wherever a session ends", async () => {
    const { user, clock } = await renderLog(async (book) => {
      await openWith(book, [84_700]);
    });
    await entryField();
    clock.pass(4 * hour);
    await asked();
    await user.type(screen.getByLabelText("Note to yourself, if you like"), "later at 5");
    await user.click(screen.getByRole("button", { name: "End it at its last lap" }));
    const last = await screen.findByRole("region", { name: "Your note from last time" });
    expect(last).toHaveTextContent("later at 5");
  });

  it("goes on where the driver says so", async () => {
    const { user, clock } = await oneLap();
    await entryField();
    clock.pass(4 * hour);
    await asked();
    await user.click(screen.getByRole("button", { name: "Go on" }));
    expect(screen.queryByText(/Is it over\?/)).not.toBeInTheDocument();
    await user.type(await entryField(), "1:24.600{Enter}");
    await waitFor(() => expect(lapRows(1)).toHaveLength(2));
  });
});
