import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addLaps, addRigTest, addRun, beginTestRun, editRun, type Logbook } from "#db";
import { aGainTest } from "../../../../support/aGainTest.ts";
import { aLap } from "../../../../support/aLap.ts";
import { openWith, renderLog, runBlock } from "../../../../support/logPage.tsx";

const order = ["B", "A", "B", "A", "A", "B"] as const;

/** An open session without laps, and a test of its combo that waits. */
async function aWaitingTest(book: Logbook): Promise<{ readonly sessionId: string; readonly testId: string }> {
  const { comboId, sessionId } = await openWith(book, []);
  const { id: testId } = await addRigTest(book, aGainTest(comboId, order, { lapsARun: 5 }));
  return { sessionId, testId };
}

const five = [84_100, 84_300, 84_200, 84_150, 84_250];

/** The same with its first runs driven and ended. */
async function aTestWithRuns(book: Logbook, runs: number): Promise<string> {
  const { sessionId, testId } = await aWaitingTest(book);
  for (let run = 0; run < runs; run++) {
    const pair = Math.floor(run / 2) + 1;
    const first = order[pair - 1] ?? "A";
    const side = run % 2 === 0 ? first : first === "A" ? "B" : "A";
    const { runId } = await beginTestRun(book, { sessionId, testId, pair, side });
    await addLaps(book, { runId, laps: five.map((ms) => ({ id: book.newId(), lap: aLap(ms) })) });
  }
  await addRun(book, { sessionId });
  return sessionId;
}

const panel = () => screen.findByRole("region", { name: "Rig test" });
const begin = async (side: string) =>
  within(await panel()).findByRole("button", { name: `It is on: begin the run with ${side}` });
const field = () => within(screen.getByRole("region", { name: "Entry" })).getByRole("textbox");

describe("a rig test on Log", () => {
  it("says which setting is next, counts its laps, and asks for the other one then", async () => {
    const { user } = await renderLog(aWaitingTest);
    expect(await screen.findByText("Rig test: pair 1 of 6. Next run: B, gain 54 %.")).toBeVisible();
    await user.click(await begin("B"));
    expect(await screen.findByText("Run with B, gain 54 %: 0 of 5 laps")).toBeVisible();
    for (const time of ["1:24.100", "1:24.300", "1:24.200", "1:24.150", "1:24.250"]) {
      await user.type(field(), `${time}{Enter}`);
      await waitFor(() => expect(field()).toHaveValue(""));
    }
    expect(await screen.findByText("Run with B, gain 54 %: 5 of 5 laps")).toBeVisible();
    await user.click(within(await panel()).getByRole("button", { name: "End run" }));
    expect(await screen.findByText("Rig test: pair 1 of 6. Next run: A, gain 72 %.")).toBeVisible();
    expect(await screen.findByRole("heading", { name: "valid" })).toBeVisible();
    expect(screen.getByText(/compared with nothing while the test lasts/)).toBeVisible();
    expect(runBlock(1).getByRole("heading")).toHaveTextContent("rig test, pair 1, B");
    expect(runBlock(1).queryByText(/usual/)).not.toBeInTheDocument();
    expect(runBlock(1).queryByRole("button", { name: /Compare/ })).not.toBeInTheDocument();
  });

  it("says after the last run that all is driven, and names no run to come", async () => {
    await renderLog((book) => aTestWithRuns(book, 12));
    const verdict = await screen.findByRole("region", { name: "Verdict of run 12" });
    expect(await within(verdict).findByText(/Every pair of the rig test is driven/)).toBeVisible();
    expect(verdict).not.toHaveTextContent(/before the test is complete|comes next|next run/);
    expect(within(await panel()).getByRole("link", { name: "What it found" })).toBeVisible();
  });

  it("has a run void for a reason, and asks for its setting again", async () => {
    const { user } = await renderLog(aWaitingTest);
    await user.click(await begin("B"));
    await user.type(field(), "1:24.100{Enter}");
    await user.click(await screen.findByRole("button", { name: "This run is void" }));
    await user.click(within(await screen.findByRole("dialog")).getByRole("button", { name: "interrupted" }));
    expect(await runBlock(1).findByText(/rig test, pair 1, B, void: interrupted/)).toBeVisible();
    expect(await begin("B")).toBeVisible();
    expect(screen.queryByRole("button", { name: "End run" })).not.toBeInTheDocument();
  });

  it("warns of a run that is driven as a race", async () => {
    await renderLog(async (book) => {
      const { sessionId, testId } = await aWaitingTest(book);
      const { runId } = await beginTestRun(book, { sessionId, testId, pair: 1, side: "B" });
      await editRun(book, { runId, patch: { kind: "race" } });
    });
    expect(
      await screen.findByText("This run does not count: race laps are not compared with practice."),
    ).toBeVisible();
  });

  it("waits for another evening where the driver says so, over a reload too, until it is driven after all", async () => {
    const { user, reload } = await renderLog(aWaitingTest);
    await user.click(within(await panel()).getByRole("button", { name: "Not tonight" }));
    expect(await screen.findByText("Rig test put off tonight.")).toBeVisible();
    expect(await panel()).not.toHaveTextContent(/Next run/);
    reload();
    await user.click(await screen.findByRole("button", { name: "Drive it after all" }));
    expect(await begin("B")).toBeVisible();
  });

  it("says during a run of practice that it comes after it", async () => {
    await renderLog(async (book) => {
      const { sessionId } = await aWaitingTest(book);
      const { runId } = await addRun(book, { sessionId });
      await addLaps(book, { runId, laps: [{ id: book.newId(), lap: aLap(84_100) }] });
    });
    expect(await screen.findByText("Rig test: pair 1 of 6 comes after this run.")).toBeVisible();
    expect(within(await panel()).queryByRole("button")).not.toBeInTheDocument();
  });
});
