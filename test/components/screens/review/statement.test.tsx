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
/** The row of a list that a combo's name stands in. */
function rowOf(list: HTMLElement, name: RegExp): HTMLElement {
  const row = within(list).getByRole("link", { name }).closest("li");
  if (row === null) throw new Error("each combo stands in a row");
  return row;
}
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
    const driven = await screen.findByRole("list", { name: "What was driven" });
    expect(rowOf(driven, /^Varnholt Ring/)).toHaveTextContent(
      /laps12 in 2 sessionsclean12 of 12, 100 %at the wheel17 minmistakes0$/,
    );
    expect(within(driven).getAllByRole("listitem").at(-1)).toHaveTextContent(
      /^the week.*18 in 3 sessions.*18 of 18, 100 %.*23 min.*0$/,
    );
    const days = screen.getByRole("list", { name: "Laps by day" });
    expect(
      within(days)
        .getAllByRole("listitem")
        .map((day) => day.textContent),
    ).toEqual(["—Mon", "6Tue", "6Wed", "—Thu", "—Fri", "—Sat", "6Sun"]);
    const times = screen.getByRole("list", { name: /^PB, usual lap and level/ });
    expect(rowOf(times, /^Varnholt Ring/)).toHaveTextContent(
      "too few 3 of 4 sessionsPB1:24.800PB this week−1.000 s fasterusual1:25.025usual before1:26.025",
    );
    expect(rowOf(times, /^Tessemoor/)).toHaveTextContent("PB56.800PB this week—");
  });

  it("leads from every row to where its figures come from", async () => {
    await renderAt(week47, statement, filled);
    const driven = await screen.findByRole("list", { name: "What was driven" });
    for (const [of, to] of [
      [driven, /^#\/review\/[0-9a-f-]{36}$/],
      [screen.getByRole("list", { name: /^PB, usual lap/ }), /^#\/review\/[0-9a-f-]{36}\?period=4w$/],
      [screen.getByRole("list", { name: "Targets in force" }), /^#\/targets\/[0-9a-f-]{36}$/],
    ] as const)
      for (const link of within(of).getAllByRole("link")) expect(link.getAttribute("href")).toMatch(to);
  });

  it("shows as gained the difference of the two PBs it shows, and no difference of two evenings", async () => {
    await renderAt(week47, statement, async (book) => {
      const { comboId } = await addCombo(book, { car: { name: "hatch" }, track: { name: "Fen" } });
      await addSessions(book, comboId, [
        { date: "2026-11-05", laps: [84_100, 84_120, 84_154, 84_156, 84_300, 84_400] },
        { date: "2026-11-17", laps: [84_000, 84_010, 84_014, 84_015, 84_300, 84_400] },
      ]);
    });
    const times = await screen.findByRole("list", { name: /^PB, usual lap and level/ });
    expect(rowOf(times, /^Fen/)).toHaveTextContent(
      "too few 2 of 4 sessionsPB1:24.000PB this week−0.100 s fasterusual1:24.015usual before1:24.155",
    );
  });

  it("gives the finding, the targets and what to do next", async () => {
    await renderAt(week47, statement, filled);
    expect(
      await screen.findByRole("heading", { level: 2, name: "PB 1.000 s faster: 1:24.800" }),
    ).toBeVisible();
    const targets = screen.getByRole("list", { name: "Targets in force" });
    expect(rowOf(targets, /^Varnholt Ring/)).toHaveTextContent(
      "wantedbest lap 1:24.500at the week's end1:24.800byTue 1 Dec 2026stateto be reached",
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
