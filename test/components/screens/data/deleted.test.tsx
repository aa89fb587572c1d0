import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, deleteLap, deleteSession, deleteTarget, dump, type Logbook, setTarget } from "#db";
import { DataScreen } from "../../../../src/screens/data/DataScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { renderAt } from "../../../support/renderAt.tsx";

/** A logbook with a deleted session of two laps, a deleted lap of another, and a deleted target. */
async function withDeleted(book: Logbook) {
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const [first = ""] = await addSessions(book, comboId, [
    { date: "2026-10-14", laps: [85_118, 85_300] },
    { date: "2026-10-21", laps: [85_000, 84_912] },
  ]);
  const runs = (await dump(book)).runs;
  const other = runs.find(({ sessionId }) => sessionId !== first);
  await deleteLap(book, { runId: other?.id ?? "", lapId: other?.laps[1]?.id ?? "" });
  await deleteSession(book, { sessionId: first });
  const { id } = await setTarget(book, { comboId, kind: "best", value: 84_000, setOn: "2026-10-14" });
  await deleteTarget(book, id);
}

const show = async (user: Awaited<ReturnType<typeof renderAt>>["user"]) =>
  user.click(await screen.findByRole("button", { name: "Show what was deleted" }));
const row = (words: string) =>
  screen.findByRole("button", { name: "Bring back", description: new RegExp(words) });

describe("what was deleted", () => {
  it("is told in words, each thing once, and comes back with one press", async () => {
    const { user } = await renderAt("#/data", <DataScreen />, withDeleted);
    await show(user);
    expect(
      await row("Session, Wed 14 Oct 2026.*Varnholt Ring · Club hatch.*deleted Wed 25 Nov 2026"),
    ).toBeVisible();
    expect(await row("Lap 1:24.912, run 1.*Wed 21 Oct 2026, Varnholt Ring · Club hatch")).toBeVisible();
    expect(await row("Target: Best lap 1:24.000")).toBeVisible();
    // The run that went with its session stands under the session's name.
    expect(screen.getAllByRole("button", { name: "Bring back" })).toHaveLength(3);

    await user.click(await row("Session, Wed 14 Oct"));
    await waitFor(() => expect(screen.getAllByRole("button", { name: "Bring back" })).toHaveLength(2));
    await waitFor(() => expect(document.activeElement).toHaveAccessibleName("Bring back"));
    await user.click(await row("Lap 1:24.912"));
    await user.click(await row("Target"));
    const nothing = await screen.findByText("Nothing deleted is left here.");
    await waitFor(() => expect(nothing.parentElement).toHaveFocus());
    await user.click(
      within(
        await screen
          .findByText("Brought back.", { selector: "p" })
          .then((p) => p.closest("div")?.parentElement ?? p),
      ).getByRole("button", { name: "Undo" }),
    );
    expect(await row("Target")).toBeVisible();
  });

  it("is nothing in a fresh logbook", async () => {
    const { user } = await renderAt("#/data", <DataScreen />);
    await show(user);
    expect(await screen.findByText("Nothing deleted is left here.")).toBeVisible();
  });
});
