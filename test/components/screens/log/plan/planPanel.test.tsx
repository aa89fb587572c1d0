import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addLaps, addRigTest, addRun, editRun, editSession, endSession, type Logbook } from "#db";
import type { PlannedRun } from "#domain";
import { useUndo } from "#state/undo.ts";
import { aGainTest } from "../../../../support/aGainTest.ts";
import { aLap } from "../../../../support/aLap.ts";
import { aPlan, aPlannedEvening } from "../../../../support/aPlan.ts";
import { entryField, renderLog, runBlock } from "../../../../support/logPage.tsx";

const panel = async () => within(await screen.findByRole("region", { name: "Plan" }));
const button = async (name: string) => (await panel()).findByRole("button", { name });
const field = () => within(screen.getByRole("region", { name: "Entry" })).getByRole("textbox");
const typed = async () => (await panel()).findByRole("textbox", { name: "Or as a whole" });

/** The plan's run of the drill is being driven. */
async function atTheDrill(book: Logbook) {
  const { sessionId, runId } = await aPlannedEvening(book);
  await addLaps(book, { runId, laps: [90_000, 89_000].map((ms) => ({ id: book.newId(), lap: aLap(ms) })) });
  const drill = await addRun(book, { sessionId });
  return { sessionId, runId: drill.runId };
}

type User = Awaited<ReturnType<typeof renderLog>>["user"];

async function lap(user: User, text: string): Promise<void> {
  await user.type(await entryField(), `${text}{Enter}`);
  await waitFor(() => expect(field()).toHaveValue(""));
}

describe("the plan over the entry line", () => {
  it("says which line the run drives, how far it is met, and goes on to the next one", async () => {
    const { user } = await renderLog(aPlannedEvening);
    const said = await panel();
    expect(said.getByText("Plan 1 of 3: Warm up · 2 laps, warm-up, easy")).toBeVisible();
    expect(said.getByText("where you brake · good when 2 laps driven")).toBeVisible();
    await lap(user, "1:30.000");
    expect(await said.findByText("1 of 2 laps")).toBeVisible();
    expect(said.queryByRole("button", { name: "End run" })).toBeNull();
    await lap(user, "1:29.000");
    expect(await said.findByText("2 of 2 laps: good")).toBeVisible();
    await user.click(await button("End run"));
    expect(
      await screen.findByText("Plan 2 of 3: Stops at the mark, corner 5 · 2 laps, drill, learning effort"),
    ).toBeVisible();
    expect(runBlock(2).getByRole("heading")).toHaveTextContent("drill, learning effort");
    expect(said.getByText("Warm up: good, 2 of 2 laps driven")).toBeVisible();
    expect(said.getByText("0 of 2 laps, stops at the mark: 0 of 0")).toBeVisible();
    const verdict = await screen.findByRole("region", { name: "Verdict of run 1" });
    expect(verdict).toHaveTextContent(
      "Next: Stops at the mark, corner 5: 2 laps, drill, learning effort, brake earlier for corner 5. Good when 8 of 10 stops at the mark.",
    );
  });

  it("passes over a line that is left out, and Undo takes it in again", async () => {
    const { user } = await renderLog(aPlannedEvening);
    await user.click(await button("Leave out"));
    expect(await screen.findByText(/^Plan 2 of 3: Stops at the mark, corner 5/)).toBeVisible();
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    expect(await screen.findByText("Plan 1 of 3: Warm up · 2 laps, warm-up, easy")).toBeVisible();
  });

  it("lets the run drive another line, one that was left out too, or none", async () => {
    const { user } = await renderLog(aPlannedEvening);
    await user.click(await button("Leave out"));
    await screen.findByText(/^Plan 2 of 3/);
    await user.click(await button("Another line of the plan"));
    const dialog = within(await screen.findByRole("dialog", { name: "Which line does this run drive?" }));
    const lines = within(dialog.getByRole("list", { name: "Lines of the plan" }));
    expect(lines.getAllByRole("listitem").map(({ textContent }) => textContent)).toEqual([
      "Warm up · 2 laps, warm-up, easyLeft out",
      "Stops at the mark, corner 5 · 2 laps, drill, learning effortthis run",
      "See what it brought · 5 laps, full effortNot driven",
    ]);
    await user.click(lines.getByRole("button", { name: /^Warm up/ }));
    expect(await screen.findByText("Plan 1 of 3: Warm up · 2 laps, warm-up, easy")).toBeVisible();
    await user.click(await button("Another line of the plan"));
    await user.click(await screen.findByRole("button", { name: "No line: a run of its own" }));
    expect(await screen.findByText("Plan: this run drives no line of it.")).toBeVisible();
    expect(runBlock(1).getByRole("heading")).toHaveTextContent("pace, full effort");
  });

  it.each([
    [aPlan.slice(0, 1), "The plan is driven."],
    [[aPlan[0], { ...aPlan[1], skipped: true }], "Plan: every line of it is driven or left out."],
  ] as const)("says when no line is left to drive (%#)", async (lines, words) => {
    await renderLog(async (book) => {
      const { sessionId, runId } = await aPlannedEvening(book, lines);
      await addLaps(book, { runId, laps: [{ id: book.newId(), lap: aLap(90_000) }] });
      await addRun(book, { sessionId });
    });
    expect(await screen.findByText(words)).toBeVisible();
    expect(screen.getByText("Warm up: not met, 1 of 2 laps driven")).toBeVisible();
  });

  it("says nothing of how a line went while the next run is driven, nor after a guest's run", async () => {
    const { user } = await renderLog(atTheDrill);
    expect(await (await panel()).findByText("Warm up: good, 2 of 2 laps driven")).toBeVisible();
    await lap(user, "1:40.000");
    expect(await (await panel()).findByText(/^1 of 2 laps/)).toBeVisible();
    expect(screen.queryByText(/^Warm up: good/)).toBeNull();
    document.body.replaceChildren();
    await renderLog(async (book) => {
      const { sessionId, runId } = await atTheDrill(book);
      await editRun(book, { runId, patch: { guest: "Jo" } });
      await addLaps(book, { runId, laps: [{ id: book.newId(), lap: aLap(99_000) }] });
      await addRun(book, { sessionId });
    });
    expect(await (await panel()).findByText(/^Plan 2 of 3/)).toBeVisible();
    expect(screen.queryByText(/^Warm up: good/)).toBeNull();
  });

  it("keeps the kind of a run that holds laps when it takes another line, and says so", async () => {
    const { user } = await renderLog(atTheDrill);
    await lap(user, "1:40.000");
    await user.click(await button("Another line of the plan"));
    await user.click(await screen.findByRole("button", { name: /^See what it brought/ }));
    await waitFor(() =>
      expect(useUndo.getState().done.at(-1)?.what).toBe(
        "Run drives “See what it brought”, and stays a drill",
      ),
    );
    expect(runBlock(2).getByRole("heading")).toHaveTextContent("drill, learning effort");
  });

  it("leaves the line to the driver's own next run while a guest is driving", async () => {
    await renderLog(async (book) => {
      const { runId } = await aPlannedEvening(book);
      await editRun(book, { runId, patch: { guest: "Jo" } });
    });
    expect(await screen.findByText("Plan: this run drives no line of it.")).toBeVisible();
  });

  it("gives way to a rig test that waits, but where it has a place for its run further down", async () => {
    const own: PlannedRun = {
      id: "01234567-89ab-7cde-8f01-0000000000c9",
      purpose: "The next run of the rig test",
    };
    const fill = (isPlanned: boolean) => async (book: Logbook) => {
      const { comboId, sessionId } = await aPlannedEvening(book, [aPlan[0]]);
      const { id: testId } = await addRigTest(
        book,
        aGainTest(comboId, ["B", "A", "B", "A", "A", "B"], { lapsARun: 5 }),
      );
      if (isPlanned)
        await editSession(book, { sessionId, patch: { plan: [aPlan[0], { ...own, rigTest: testId }] } });
    };
    await renderLog(fill(false));
    expect(await screen.findByRole("region", { name: "Rig test" })).toHaveTextContent("Next run: B");
    expect(screen.queryByRole("region", { name: "Plan" })).toBeNull();
    document.body.replaceChildren();
    const { user } = await renderLog(fill(true));
    expect(await screen.findByText("Plan 1 of 2: Warm up · 2 laps, warm-up, easy")).toBeVisible();
    expect(screen.queryByRole("region", { name: "Rig test" })).toBeNull();
    await lap(user, "1:30.000");
    await user.click(await screen.findByRole("button", { name: "End run" }));
    expect(await screen.findByRole("region", { name: "Rig test" })).toHaveTextContent("Next run: B");
    await user.click(await screen.findByRole("button", { name: "It is on: begin the run with B" }));
    expect(await screen.findByText("Run with B, gain 54 %: 0 of 5 laps")).toBeVisible();
  });
});

describe("a drill", () => {
  it("is counted by two keys, Undo takes the last one back, and a reload loses none", async () => {
    const { user, reload } = await renderLog(atTheDrill);
    for (const name of ["At the mark", "Missed", "At the mark"]) await user.click(await button(name));
    expect(await (await panel()).findByText("2 of 3")).toBeVisible();
    await user.click(await screen.findByRole("button", { name: "Undo" }));
    expect(await (await panel()).findByText("1 of 2")).toBeVisible();
    reload();
    expect(await (await panel()).findByText("1 of 2")).toBeVisible();
    expect(await screen.findByRole("button", { name: "End run" })).toBeVisible();
  });

  it.each(["7 of 10", "7/10"])("takes %s as a whole", async (text) => {
    const { user } = await renderLog(atTheDrill);
    await user.type(await typed(), `${text}{Enter}`);
    expect(await (await panel()).findByText("7 of 10")).toBeVisible();
    await waitFor(async () => expect(await typed()).toHaveValue(""));
    expect(runBlock(2).getByText("7 of 10 stops at the mark")).toBeVisible();
  });

  it("stores a count that is typed and left, and asks for nothing where nothing is typed", async () => {
    const { user } = await renderLog(atTheDrill);
    await user.click(await button("Count"));
    expect(await typed()).not.toHaveAccessibleDescription();
    await user.type(await typed(), "3 of 4");
    await user.click(await entryField());
    expect(await (await panel()).findByText("3 of 4")).toBeVisible();
    await waitFor(async () => expect(await typed()).toHaveValue(""));
  });

  it("says what is wrong with a count, keeps it over a reload, and stores it once it is right", async () => {
    const { user, reload } = await renderLog(atTheDrill);
    await user.type(await typed(), "12 of 10{Enter}");
    expect(await typed()).toHaveAccessibleDescription(/more worked than were tried\. Write 10 of 12/);
    await waitFor(async () => expect(await typed()).toHaveFocus());
    expect(await (await panel()).findByText("0 of 0")).toBeVisible();
    reload();
    await waitFor(async () => expect(await typed()).toHaveValue("12 of 10"));
    await user.clear(await typed());
    await user.type(await typed(), "10 of 12");
    await user.click(await button("Count"));
    expect(await (await panel()).findByText("10 of 12")).toBeVisible();
    expect(
      await (await panel()).findByText("0 of 2 laps, 10 of 12 stops at the mark: good so far"),
    ).toBeVisible();
  });

  it("has slow laps that are no pace: they bring no PB and are counted as a drill's", async () => {
    const { user } = await renderLog(atTheDrill);
    await lap(user, "1:20.000");
    await lap(user, "1:20.100");
    await user.click(await button("End run"));
    await user.click(await screen.findByRole("button", { name: "End session" }));
    await user.click(
      within(await screen.findByRole("dialog")).getByRole("button", { name: "End the session" }),
    );
    expect(await screen.findByText(/2 drill, 2 warm-up/)).toBeVisible();
    expect(screen.queryByText(/(first|new) PB/)).not.toBeInTheDocument();
  });
});

describe("an ended session with a plan", () => {
  it("shows the plan beside what came of it, and forgets neither when it is opened again", async () => {
    const { user } = await renderLog(async (book) => {
      const { sessionId } = await atTheDrill(book);
      await endSession(book, { sessionId });
      window.location.hash = `#/log/${sessionId}`;
    });
    const part = await screen.findByRole("region", { name: "Plan and outcome" });
    expect(
      within(part)
        .getAllByRole("listitem")
        .map(({ textContent }) => textContent),
    ).toEqual([
      "Warm up 2 laps, warm-up, easyGood when 2 laps drivenGood 2 of 2 laps driven in run 1",
      "Stops at the mark, corner 5 2 laps, drill, learning effortGood when 8 of 10 stops at the markNot driven ",
      "See what it brought 5 laps, full effortGood when usual lap 1:24.50 or underNot driven ",
    ]);
    await user.click(screen.getByRole("button", { name: /^Go on with/ }));
    expect(await screen.findByText(/^Plan 2 of 3: Stops at the mark/)).toBeVisible();
    await useUndo.getState().undo();
    expect(await screen.findByRole("region", { name: "Plan and outcome" })).toBeVisible();
  });
});
