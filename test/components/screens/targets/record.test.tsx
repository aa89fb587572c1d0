import { readFileSync } from "node:fs";
import { screen, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, checkRows, type Logbook, mergeInto, setTarget } from "#db";
import { ownRecord } from "#stats";
import { sayChance, sayFifth } from "#words";
import { TargetsScreen } from "../../../../src/screens/targets/TargetsScreen.tsx";
import { addForecast } from "../../../support/addForecast.ts";
import { addSessions } from "../../../support/addSessions.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const { rows } = checkRows(JSON.parse(readFileSync("demo-data/demo-logbook.json", "utf8")).tables);
const page = <TargetsScreen />;
const at = "#/targets?part=record";

/** Targets whose date has passed, each told a chance in October; the evening after it reached some of them. */
const dueTargets = (chance: number, values: readonly number[]) => async (book: Logbook) => {
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const madeOn = "2026-11-01";
  for (const value of values) {
    const wanted = { comboId, kind: "best", value, by: "2026-11-20" } as const;
    const { id: targetId } = await setTarget(book, { ...wanted, setOn: "2026-10-30" });
    await addForecast(book, { ...wanted, targetId, madeOn, chance, method: "level, version 1" });
  }
  return comboId;
};

describe("the record of the app's own forecasts", () => {
  it("says what it will hold while it holds nothing", async () => {
    await renderAt(at, page);
    expect(await screen.findByText(/^No chance has been kept yet\./)).toBeVisible();
    expect(screen.getByRole("link", { name: "Back to Targets" })).toHaveAttribute("href", "#/targets");
  });

  it("shows the demo's forecasts with the figures of the module: picture, sentence, list", async () => {
    await renderAt(at, page, (book) => mergeInto(book, rows, "the demo"));
    const scored = rows.forecasts.flatMap((forecast) =>
      forecast.reached === undefined
        ? []
        : [{ forecast, target: undefined, outcome: { known: true, value: forecast.reached } as const }],
    );
    const { record } = ownRecord(scored);
    if (record === undefined) throw new Error("the demo has forecasts that came due");
    const picture = await screen.findByRole("img", { name: record.fifths.map(sayFifth).join("; ") });
    expect(picture).toBeVisible();
    expect(screen.getByText(/^So far, from \d targets?: error \d\.\d\d\. 0 is perfect/)).toBeVisible();
    expect(
      screen.getByText("Too few to judge the chances yet: 3 targets came due, it takes 5."),
    ).toBeVisible();

    const ofWeek12 = await screen.findByRole("button", {
      name: /^Mean of 5 laps 1:24\.000 by Fri 20 Nov 2026.*Reached/,
    });
    // The one that came due last stands open.
    expect(ofWeek12).toHaveAttribute("aria-expanded", "true");
    const said = rows.forecasts.find(({ madeOn, by }) => madeOn === "2026-10-22" && by === "2026-11-20");
    const row = within(ofWeek12.closest("div") as HTMLElement)
      .getByText("Thu 22 Oct 2026")
      .closest("li");
    expect(row).toHaveTextContent(sayChance(said?.chance ?? 0));
    expect(row).toHaveTextContent("came true");
  });

  it("says so when its own record contradicts the chances", async () => {
    // Six told 16 chances in 20 and none reached: if the chances were right, 0.2⁶.
    await renderAt(at, page, dueTargets(0.8, [80_000, 80_100, 80_200, 80_300, 80_400, 80_500]));
    expect(
      await screen.findByText(
        /^The chances have been too hopeful for you: 0 of 6 targets were reached, about 5 were to be expected\./,
      ),
    ).toBeVisible();
    expect(screen.getByText(/^None of 6 forecasts came true so far/)).toBeVisible();
  });

  it("judges by the laps as they are now, and says why one is not scored", async () => {
    await renderAt(at, page, async (book) => {
      const comboId = await dueTargets(0.4, [83_500])(book);
      const laps = [83_400, 83_600, 83_700];
      // The forecast was written down by the clock of today, so this evening is the first after it.
      await addSessions(book, comboId, [{ date: "2026-11-10", laps }]);
    });
    expect(await screen.findByText("Not reached")).toBeVisible();
    expect(screen.getByText("8 chances in 20")).toBeVisible();
  });
});

it("the way to the record stands on Targets with what it comes to", async () => {
  await renderAt("#/targets", page, dueTargets(0.8, [80_000, 80_100, 80_200, 80_300, 80_400]));
  const link = await screen.findByRole("link", { name: "What became of the chances" });
  expect(link).toHaveAttribute("href", at);
  expect(link.closest("p")).toHaveTextContent("too hopeful for you: 0 of 5 targets reached");
});
