import { screen, waitFor, within } from "@testing-library/react";
import { expect, it } from "vitest";
import { addRigTest, beginTestRun } from "#db";
import { aGainTest } from "../../../support/aGainTest.ts";
import { openWith, renderLog, runBlock } from "../../../support/logPage.tsx";

it("a run of a rig test names its setting where it is changed, and can be taken out of the test", async () => {
  const { user } = await renderLog(async (book) => {
    const { comboId, sessionId } = await openWith(book, []);
    const { id: testId } = await addRigTest(book, aGainTest(comboId, ["B", "A", "B", "A", "A", "B"]));
    await beginTestRun(book, { sessionId, testId, pair: 1, side: "B" });
  });
  await user.click(await screen.findByRole("button", { name: "Change run 1" }));
  const dialog = within(await screen.findByRole("dialog", { name: "Run 1" }));
  expect(await dialog.findByText("Driven with B, gain 54 %, of the rig test: pair 1.")).toBeVisible();
  await user.click(dialog.getByRole("button", { name: "Take this run out of the test" }));
  await waitFor(() => expect(dialog.queryByText(/of the rig test/)).not.toBeInTheDocument());
  await user.click(dialog.getByRole("button", { name: "Done" }));
  expect(runBlock(1).getByRole("heading")).not.toHaveTextContent("rig test");
});
