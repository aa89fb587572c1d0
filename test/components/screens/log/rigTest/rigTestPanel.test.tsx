import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addRigTest, type Logbook } from "#db";
import { openWith, renderLog, runBlock } from "../../../../support/logPage.tsx";

/** An open session without laps, and a test of its combo that waits. */
async function aWaitingTest(book: Logbook): Promise<void> {
  const { comboId } = await openWith(book, []);
  await addRigTest(book, {
    comboId,
    question: "Less gain?",
    sayA: "gain 72 %",
    sayB: "gain 54 %",
    lapsARun: 5,
    pairsPlanned: 6,
    level: 0.1,
    seed: 1,
    pairs: (["B", "A", "B", "A", "A", "B"] as const).map((first) => ({ first })),
  });
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

  it("has a run void for a reason, and asks for its setting again", async () => {
    const { user } = await renderLog(aWaitingTest);
    await user.click(await begin("B"));
    await user.type(field(), "1:24.100{Enter}");
    await user.click(await screen.findByRole("button", { name: "This run is void" }));
    await user.click(within(await screen.findByRole("dialog")).getByRole("button", { name: "interrupted" }));
    expect(await runBlock(1).findByText(/rig test, pair 1, B, void: interrupted/)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "End run" }));
    expect(await begin("B")).toBeVisible();
  });

  it("waits for another evening where the driver says so, over a reload too", async () => {
    const { user, reload } = await renderLog(aWaitingTest);
    await user.click(within(await panel()).getByRole("button", { name: "Not tonight" }));
    await waitFor(() => expect(screen.queryByRole("region", { name: "Rig test" })).not.toBeInTheDocument());
    reload();
    await screen.findByRole("region", { name: "Entry" });
    expect(screen.queryByRole("region", { name: "Rig test" })).not.toBeInTheDocument();
  });
});
