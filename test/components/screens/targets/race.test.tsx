import { screen } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, type Logbook } from "#db";
import { TargetsScreen } from "../../../../src/screens/targets/TargetsScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const page = <TargetsScreen />;
const at = "#/targets?part=race";

/** Three evenings of ten laps about 1:24.0. */
const evenings = async (book: Logbook) => {
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const laps = [60, -40, 20, -60, 10, 40, -30, 50, -20, -30].map((more) => 84_000 + more);
  await addSessions(
    book,
    comboId,
    ["2026-11-10", "2026-11-14", "2026-11-18"].map((date) => ({ date, laps })),
  );
};
const dots = () => [...document.querySelectorAll("[data-dot]")];

describe("a race distance", () => {
  it("says what it needs where nothing was driven", async () => {
    await renderAt(at, page);
    expect(await screen.findByText(/^It is worked out from laps with a combo/)).toBeVisible();
  });

  it("says with too few laps how many it takes", async () => {
    await renderAt(at, page, async (book) => {
      const { comboId } = await addCombo(book, { car: { name: "kart" }, track: { name: "Varnholt Ring" } });
      await addSessions(book, comboId, [{ date: "2026-11-10", laps: [84_000, 84_100] }]);
    });
    expect(await screen.findByText("Not enough timed laps yet: 2 of 5.")).toBeVisible();
  });

  it("tells its length, the chance of a clean one and what it rests on, before anything is typed", async () => {
    await renderAt(at, page, evenings);
    // Twenty laps of 84 s are 28 minutes.
    expect(
      await screen.findByText(/^20 laps take about (27:5\d|28:0\d)\. 16 races in 20 take/),
    ).toBeVisible();
    expect(screen.getByText(/^All 20 laps clean: .* chances? in 20\./)).toBeVisible();
    expect(screen.getByText(/^From 30 laps of your last 3 pace runs/)).toBeVisible();
    expect(dots()).toHaveLength(20);
  });

  it("follows what is typed: minutes, a mean lap to beat as filled dots, fuel with its caution", async () => {
    const { user } = await renderAt(at, page, evenings);
    await screen.findByText(/^20 laps take about/);
    await user.click(screen.getByRole("radio", { name: "minutes" }));
    const amount = screen.getByRole("textbox", { name: "Minutes" });
    await user.clear(amount);
    await user.type(amount, "43");
    // Thirty laps of 84 s are 42 minutes, 31 are more than 43.
    expect(await screen.findByText(/^43 minutes hold about 31 laps, over at about 43:[12]\d/)).toBeVisible();
    await user.type(screen.getByRole("textbox", { name: /^Mean lap to beat/ }), "1:24.1");
    const said = await screen.findByText(/^A mean lap under 1:24\.100: .*chances? in 20\.$/);
    const told = Number(/(\d+) chances? in 20/.exec(said.textContent)?.[1]);
    const faster = dots().filter((dot) => dot.getAttribute("data-dot") === "faster");
    expect(Math.abs(faster.length - told)).toBeLessThanOrEqual(1);
    await user.type(screen.getByRole("textbox", { name: "Fuel a lap" }), "2,5");
    await user.type(screen.getByRole("textbox", { name: "Reserve" }), "3");
    const fuel = await screen.findByText(/^Take \d+\.\d l: \d+ laps of 2\.50 l, and 3\.0 l in reserve\.$/);
    const laps = Number(/: (\d+) laps/.exec(fuel.textContent)?.[1]);
    expect(laps).toBeGreaterThanOrEqual(30);
    expect(fuel).toHaveTextContent(`Take ${(2.5 * laps + 3).toFixed(1)} l`);
    expect(screen.getByText(/^An estimate: use changes with pace/)).toBeVisible();
  });

  it("keeps what was typed over a reload, and calls a figure wrong once it is left", async () => {
    const { user, reload } = await renderAt(at, page, evenings);
    const amount = await screen.findByRole("textbox", { name: "Laps" });
    await user.clear(amount);
    await user.type(amount, "1.5");
    expect(screen.queryByText(/not a whole number/)).not.toBeInTheDocument();
    await user.tab();
    expect(await screen.findByText(/1\.5 is not a whole number/)).toBeVisible();
    expect(screen.getByText("Type how long the race is.")).toBeVisible();
    await user.clear(amount);
    await user.type(amount, "15");
    await screen.findByText(/^15 laps take about/);
    reload();
    expect(await screen.findByText(/^15 laps take about/)).toBeVisible();
    expect(screen.getByRole("textbox", { name: "Laps" })).toHaveValue("15");
  });
});
