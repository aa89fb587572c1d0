import { screen, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, addLap, addRun, type Logbook } from "#db";
import { ReviewScreen } from "../../../../src/screens/review/ReviewScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { aLap } from "../../../support/aLap.ts";
import { pick } from "../../../support/pick.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const filled = async (book: Logbook) => {
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const [first = ""] = await addSessions(book, comboId, [
    { date: "2026-11-02", laps: [84_000, 84_250], note: "Braked too late at the Mill", focus: "braking" },
    { date: "2026-11-09", laps: [83_400], decimals: 1, note: "windy" },
  ]);
  const { runId } = await addRun(book, { sessionId: first });
  const lap = aLap(90_000, { remarks: [{ kind: "off", corner: 5 }], note: "wide at the Mill" });
  await addLap(book, { runId, id: book.newId(), lap });
};
const search = <ReviewScreen />;
const results = (name: RegExp) => screen.findByRole("table", { name });

describe("Search", () => {
  it("asks for nothing at first, and says so", async () => {
    await renderAt("#/review/search", search, filled);
    expect(await screen.findByText(/^Fill in one field or more/)).toBeVisible();
    expect(screen.getByRole("link", { name: "search" })).toHaveAttribute("aria-current", "page");
  });

  it("words find the session and the lap, each leading to its place", async () => {
    const { user } = await renderAt("#/review/search", search, filled);
    await user.type(await screen.findByRole("searchbox", { name: "Words" }), "mill{Enter}");
    expect(window.location.hash).toBe("#/review/search?words=mill");
    expect(await screen.findByText("1 session and 1 lap found.")).toBeVisible();
    expect(screen.getByRole("searchbox", { name: "Words" })).toHaveFocus();
    const session = within(await results(/^Sessions found/)).getByRole("link");
    expect(session).toHaveAccessibleName("Mon 2 Nov 2026");
    expect(session.getAttribute("href")).toMatch(/^#\/log\/[0-9a-f-]{36}$/);
    const lap = within(await results(/^Laps found/)).getByRole("link", {
      name: "Mon 2 Nov 2026, run 2, lap 1",
    });
    expect(lap.getAttribute("href")).toMatch(/^#\/log\/[0-9a-f-]{36}\?lap=[0-9a-f-]{36}$/);
    expect(screen.getByText("off, corner 5 · wide at the Mill")).toBeVisible();
  });

  it("a remark, a focus and days narrow it; back in the history brings the former search back", async () => {
    const { user } = await renderAt("#/review/search", search, filled);
    pick(await screen.findByLabelText("Remark"), "off");
    expect(screen.getByLabelText("Remark")).toHaveValue("off");
    await user.click(screen.getByRole("button", { name: "Search" }));
    expect(window.location.hash).toBe("#/review/search?remark=off");
    // Looked for by its words first: to look for a role again and again keeps a busy machine from reading the ledger.
    expect(await screen.findByText("1 session and 1 lap found.")).toBeVisible();
    const row = within(await results(/^Sessions found/)).getByRole("row", { name: /Varnholt Ring/ });
    expect(row).toHaveTextContent("3, 1 found");
    pick(screen.getByLabelText("Focus"), "line");
    await user.click(screen.getByRole("button", { name: "Search" }));
    expect(await screen.findByText("Nothing found.")).toBeVisible();
    window.history.back();
    expect(await results(/^Laps found/)).toBeInTheDocument();
    expect(screen.getByLabelText("Focus")).toHaveValue("");
  });

  it("a limit means the time that was typed, and a turned range is refused at its field", async () => {
    const { user } = await renderAt("#/review/search", search, filled);
    await user.type(await screen.findByLabelText("Lap time to"), "1:24.2{Enter}");
    expect(await screen.findByText("2 sessions and 2 laps found.")).toBeVisible();
    expect(screen.getByLabelText("Lap time to")).toHaveValue("1:24.200");
    await user.type(screen.getByLabelText("Lap time from"), "1:25.0{Enter}");
    expect(screen.getByLabelText("Lap time to")).toHaveFocus();
    expect(screen.getByLabelText("Lap time to")).toHaveAccessibleDescription(/shorter than the shortest/);
    await user.click(screen.getByRole("button", { name: "Clear" }));
    expect(screen.getByLabelText("Lap time from")).toHaveValue("");
  });

  it("empties what was typed or refused, before anything was looked for", async () => {
    const { user } = await renderAt("#/review/search", search, filled);
    await user.type(await screen.findByRole("searchbox", { name: "Words" }), "mill");
    await user.type(screen.getByLabelText("Lap time to"), "1:99{Enter}");
    expect(screen.getByLabelText("Lap time to")).toBeInvalid();
    await user.click(screen.getByRole("button", { name: "Clear" }));
    expect(screen.getByRole("searchbox", { name: "Words" })).toHaveValue("");
    expect(screen.getByLabelText("Lap time to")).toHaveValue("");
    await user.type(screen.getByLabelText("Lap time to"), "1:99");
    expect(screen.getByLabelText("Lap time to")).toBeValid();
  });

  it("an address that asks is answered at once, its fields filled", async () => {
    await renderAt("#/review/search?words=windy&longest=84000", search, filled);
    expect(await screen.findByText("1 session and 1 lap found.")).toBeVisible();
    expect(screen.getByLabelText("Lap time to")).toHaveValue("1:24.000");
    expect(within(await results(/^Laps found/)).getByText("1:23.4")).toBeVisible();
  });
});
