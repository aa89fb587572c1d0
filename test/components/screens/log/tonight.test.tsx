import { screen, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addPlan, addRigTest, type Logbook, sessionsOfCombo } from "#db";
import type { PlannedRun } from "#domain";
import { useUndo } from "#state/undo.ts";
import { addSessions } from "../../../support/addSessions.ts";
import { aGainTest } from "../../../support/aGainTest.ts";
import { aCombo, entryField, openWith, pauseToRead, renderLog } from "../../../support/logPage.tsx";

const wednesday = Date.UTC(2026, 11, 2, 18);

const ids = ["01234567-89ab-7cde-8f01-0000000000b1", "01234567-89ab-7cde-8f01-0000000000b2"] as const;
const lines: readonly PlannedRun[] = [
  { id: ids[0], purpose: "Warm up", kind: "warm-up", effort: "easy", laps: 3, rule: "warm-up" },
  {
    id: ids[1],
    purpose: "Corner 5",
    laps: 8,
    effort: "learning",
    attendTo: "brake earlier for corner 5",
    goodWhen: "no mistake at corner 5",
    reason: "It costs most.",
  },
];

/** Three evenings of 24 laps, whose draft is a warm-up, what costs most and a run that shows the effect. */
async function evenings(book: Logbook): Promise<string> {
  const comboId = await aCombo(book);
  const eight = [84_000, 84_900, 84_100, 84_700, 84_300, 84_500, 84_050, 84_800];
  const laps = [...eight, ...eight, ...eight];
  for (const date of ["2026-11-20", "2026-11-24", "2026-11-28"])
    await addSessions(book, comboId, [{ date, laps }]);
  return comboId;
}

const withPlan = async (book: Logbook) => {
  const comboId = await evenings(book);
  await addPlan(book, { comboId, lines });
  return comboId;
};

const tonight = async (by: "your figures" | "your plan") =>
  within(await screen.findByRole("region", { name: `Tonight, by ${by}` }));

const plan = () => screen.findByRole("region", { name: "Plan" });

describe("tonight on the start page", () => {
  it("is the draft: one suggestion with its reason, the other runs in a line each, and the whole plan behind a link", async () => {
    await renderLog(evenings, "#/log", wednesday);
    const part = await tonight("your figures");
    const runs = await part.findAllByRole("listitem");
    expect(runs[0]).toHaveTextContent("Warm up3 laps, warm-up, easy");
    expect(part.getAllByRole("heading").map(({ textContent }) => textContent)).toEqual(["Equal laps"]);
    expect(part.getByText(/^Over your last three evenings uneven laps cost/)).toBeVisible();
    expect(part.getByRole("link", { name: "The whole plan" })).toHaveAttribute(
      "href",
      expect.stringMatching(/^#\/targets\/[0-9a-f-]{36}\?part=plan$/),
    );
    expect(screen.getByRole("button", { name: "Same as last time" })).toBeVisible();
  });

  it("starts with the draft, whose runs then stand over the entry line, and Undo is back on Log", async () => {
    const { user } = await renderLog(evenings, "#/log", wednesday);
    const part = await tonight("your figures");
    await user.click(await part.findByRole("button", { name: "Start with this plan" }));
    await entryField();
    expect(await plan()).toHaveTextContent(/^Plan 1 of \d: Warm up · 3 laps, warm-up, easy/);
    await useUndo.getState().undo();
    expect(await screen.findByRole("button", { name: "Same as last time" })).toBeVisible();
  });

  it("is the driver's own plan where one waits, and it waits again once its start is taken back", async () => {
    const { user } = await renderLog(withPlan, "#/log", wednesday);
    const part = await tonight("your plan");
    expect(await part.findByRole("heading", { name: "Corner 5" })).toBeVisible();
    expect(part.getByText("It costs most.")).toBeVisible();
    expect(part.queryByRole("button", { name: "Start with this plan" })).toBeNull();
    await user.click(screen.getByRole("button", { name: "Start with your plan" }));
    await entryField();
    expect(await plan()).toHaveTextContent("Plan 1 of 2: Warm up · 3 laps, warm-up, easy");
    await useUndo.getState().undo();
    expect(await screen.findByRole("button", { name: "Start with your plan" })).toBeVisible();
  });

  it("leaves the plan waiting where the session starts without it", async () => {
    const { user } = await renderLog(withPlan, "#/log", wednesday);
    await user.click(await screen.findByRole("button", { name: "Start without the plan" }));
    await entryField();
    expect(await plan()).toHaveTextContent("Your plan waits: 2 runs, 11 laps.");
    await useUndo.getState().undo();
    expect(await screen.findByRole("button", { name: "Start with your plan" })).toBeVisible();
  });

  it("names the next run of a rig test before the driver's own plan", async () => {
    await renderLog(
      async (book) => {
        const comboId = await withPlan(book);
        await addRigTest(book, aGainTest(comboId, ["B", "A", "B", "A", "A", "B"], { lapsARun: 5 }));
      },
      "#/log",
      wednesday,
    );
    const part = await tonight("your plan");
    expect(await part.findByRole("heading", { name: "The next run of the rig test" })).toBeVisible();
    expect(part.getAllByRole("listitem")).toHaveLength(3);
  });

  it("goes along with a session that began without it, and lets go of it again", async () => {
    const { user } = await renderLog(withPlan, "#/log", wednesday);
    await user.click(await screen.findByRole("button", { name: "Start without the plan" }));
    await entryField();
    await user.click(within(await plan()).getByRole("button", { name: "Take it along" }));
    expect(await screen.findByText("Plan 1 of 2: Warm up · 3 laps, warm-up, easy")).toBeVisible();
    await useUndo.getState().undo();
    expect(await screen.findByText("Your plan waits: 2 runs, 11 laps.")).toBeVisible();
  });
});

describe("a session that began without a plan, where none waits", () => {
  it("has the way to one until a run has ended: what that says needs the room", async () => {
    const { user } = await renderLog((book) => openWith(book, []));
    const way = { name: "Plan this session" };
    expect(await screen.findByRole("link", way)).toBeVisible();
    await user.type(await entryField(), "1:24.600{Enter}");
    await user.click(await screen.findByRole("button", { name: "End run" }));
    await screen.findByRole("region", { name: "Verdict of run 1" });
    await pauseToRead();
    expect(screen.queryByRole("link", way)).toBeNull();
  });
});

describe("next time, in an ended session", () => {
  it("is the suggestion of the plan, with its reason", async () => {
    await renderLog(
      async (book) => {
        const sessions = await sessionsOfCombo(book, await evenings(book));
        const last = sessions.find(({ date }) => date === "2026-11-28");
        window.location.hash = `#/log/${last?.id}`;
      },
      "#/log",
      wednesday,
    );
    const next = (await screen.findByText("Next time:")).parentElement;
    // It is worked out while the buttons stand there, and does not move them.
    const back = screen.getByRole("button", { name: "Back to Log" });
    expect(next && back.compareDocumentPosition(next)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
    expect(next).toHaveTextContent(
      /^Next time: Equal laps: \d laps, brisk, the same brake points and kerbs\. Over your last three evenings uneven laps cost/,
    );
  });
});
