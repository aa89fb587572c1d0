import { screen, within } from "@testing-library/react";
import { describe, expect, it, vi } from "vitest";
import { addCombo, type Logbook, setTarget } from "#db";
import { ReviewScreen } from "../../../../src/screens/review/ReviewScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const lapsAbout = (ms: number) => [0, 200, -100, 100, -200, 50].map((off) => ms + off);

/** Sessions of weeks 45, 46 and 47; `renderAt` stands on Wednesday of week 48, 25 November 2026. */
const filled = async (book: Logbook) => {
  const hatch = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const single = await addCombo(book, { car: { name: "single-seater" }, track: { name: "Tessemoor" } });
  await setTarget(book, {
    comboId: hatch.comboId,
    kind: "best",
    value: 84_500,
    by: "2026-12-01",
    setOn: "2026-11-01",
  });
  await addSessions(book, hatch.comboId, [
    { date: "2026-11-05", laps: lapsAbout(86_000) },
    { date: "2026-11-17", laps: lapsAbout(85_500) },
    { date: "2026-11-22", laps: lapsAbout(85_000) },
  ]);
  await addSessions(book, single.comboId, [{ date: "2026-11-18", laps: lapsAbout(57_000) }]);
};
const statement = <ReviewScreen />;
const week47 = "#/review/statement?week=2026-W47";

describe("the weekly statement", () => {
  it("with an empty ledger says what it needs", async () => {
    await renderAt("#/review/statement", statement);
    expect(await screen.findByRole("heading", { level: 1, name: "Week 48 of 2026" })).toBeVisible();
    expect(await screen.findByText(/^Nothing was driven yet/)).toBeVisible();
    expect(screen.queryByRole("button", { name: "Print" })).not.toBeInTheDocument();
  });

  it("opens on the last week that was driven", async () => {
    await renderAt("#/review/statement", statement, filled);
    expect(await screen.findByRole("heading", { level: 1, name: "Week 47 of 2026" })).toBeVisible();
  });

  it("a week without a session leads to the nearest ones", async () => {
    const { user } = await renderAt("#/review/statement?week=2026-W46", statement, filled);
    expect(await screen.findByRole("heading", { name: "Nothing was driven in this week" })).toBeVisible();
    expect(screen.getByRole("link", { name: /^Tue 17 Nov 2026/ })).toHaveAttribute("href", week47);
    await user.click(screen.getByRole("link", { name: /^Thu 5 Nov 2026/ }));
    expect(await screen.findByRole("heading", { level: 1, name: "Week 45 of 2026" })).toBeVisible();
  });

  it("balances what was driven, and brings PB and usual lap forward", async () => {
    await renderAt(week47, statement, filled);
    const driven = await screen.findByRole("table", { name: "What was driven" });
    expect(within(driven).getByRole("row", { name: /^Varnholt Ring/ })).toHaveTextContent(
      /club hatch21217 min0$/,
    );
    expect(within(driven).getByRole("row", { name: /^the week/ })).toHaveTextContent(/^the week31823 min0$/);
    const days = screen.getByRole("list", { name: "Laps by day" });
    expect(
      within(days)
        .getAllByRole("listitem")
        .map((day) => day.textContent),
    ).toEqual(["Mon —", "Tue 6", "Wed 6", "Thu —", "Fri —", "Sat —", "Sun 6"]);
    const times = screen.getByRole("table", { name: /^PB and usual lap/ });
    const hatch = within(times).getByRole("row", { name: /^Varnholt Ring/ });
    expect(hatch).toHaveTextContent("1:25.8001:24.800−1.000 s faster1:26.0251:25.0253 of 4 sessions");
    expect(within(times).getByRole("row", { name: /^Tessemoor/ })).toHaveTextContent(
      "—0:56.800".replace("0:", ""),
    );
  });

  it("shows as gained the difference of the two PBs it shows, and no difference of two evenings", async () => {
    await renderAt(week47, statement, async (book) => {
      const { comboId } = await addCombo(book, { car: { name: "hatch" }, track: { name: "Fen" } });
      await addSessions(book, comboId, [
        { date: "2026-11-05", laps: [84_100, 84_120, 84_154, 84_156, 84_300, 84_400] },
        { date: "2026-11-17", laps: [84_000, 84_010, 84_014, 84_015, 84_300, 84_400] },
      ]);
    });
    const times = await screen.findByRole("table", { name: /^PB and usual lap/ });
    expect(within(times).getByRole("row", { name: /^Fen/ })).toHaveTextContent(
      "1:24.1001:24.000−0.100 s faster1:24.1551:24.0152 of 4 sessions",
    );
  });

  it("gives the finding, the targets and what to do next", async () => {
    await renderAt(week47, statement, filled);
    expect(
      await screen.findByRole("heading", { level: 2, name: "PB 1.000 s faster: 1:24.800" }),
    ).toBeVisible();
    const targets = screen.getByRole("table", { name: "Targets in force" });
    expect(within(targets).getByRole("row", { name: /^Varnholt Ring/ })).toHaveTextContent(
      "best lap 1:24.500Tue 1 Dec 20261:24.800to be reached",
    );
    expect(
      within(screen.getByRole("region", { name: "Next" })).getByText(/The reason: measured on you/),
    ).toBeVisible();
  });

  it("goes to the week before and after, not into the future, and prints", async () => {
    const { user } = await renderAt(week47, statement, filled);
    await user.click(await screen.findByRole("link", { name: "The week after" }));
    expect(await screen.findByRole("heading", { level: 1, name: "Week 48 of 2026" })).toBeVisible();
    expect(screen.queryByRole("link", { name: "The week after" })).not.toBeInTheDocument();
    await user.click(screen.getByRole("link", { name: "The week before" }));
    const print = vi.spyOn(window, "print").mockImplementation(() => undefined);
    await user.click(await screen.findByRole("button", { name: "Print" }));
    expect(print).toHaveBeenCalledOnce();
    print.mockRestore();
  });
});
