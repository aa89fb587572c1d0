import { screen, waitFor, within } from "@testing-library/react";
import { expect, it } from "vitest";
import { createLogbook, editRun, openLogbook, openShelf, recentSessions, runsOfSession } from "#db";
import { lapRows, openWith, renderLog } from "../../../support/logPage.tsx";
import { pick } from "../../../support/pick.ts";

it("a guest's run goes to their own logbook, and Undo takes it back out of there", async () => {
  const { user, surroundings } = await renderLog(async (book) => {
    const { runId } = await openWith(book, [84_700, 84_900]);
    await editRun(book, { runId, patch: { guest: "Jo" } });
  });
  const shelf = await openShelf(surroundings);
  const { name } = await createLogbook(shelf, { title: "Jo's logbook" });
  shelf.close();
  const theirs = await openLogbook({ ...surroundings, name });
  const lapsThere = async () => {
    const [session] = await recentSessions(theirs, 1, Number.MAX_SAFE_INTEGER);
    const runs = session ? await runsOfSession(theirs, session.id) : [];
    return runs.map(({ guest, laps }) => ({ guest, times: laps.map(({ ms }) => ms) }));
  };

  await user.click(await screen.findByRole("button", { name: "Change run 1" }));
  const dialog = within(await screen.findByRole("dialog", { name: "Run 1" }));
  const list = await dialog.findByLabelText("Move this run to the guest's own logbook");
  pick(list, "Jo's logbook");
  await user.click(dialog.getByRole("button", { name: "Move" }));
  expect((await screen.findAllByText("Run moved to “Jo's logbook”."))[0]).toBeVisible();
  await waitFor(() => expect(screen.queryByRole("table", { name: "Laps of run 1" })).not.toBeInTheDocument());
  expect(await lapsThere()).toEqual([{ guest: undefined, times: [84_700, 84_900] }]);

  await user.click(screen.getByRole("button", { name: "Undo" }));
  await waitFor(() => expect(lapRows(1)).toHaveLength(2));
  expect(await lapsThere()).toEqual([]);
  theirs.close();
});
