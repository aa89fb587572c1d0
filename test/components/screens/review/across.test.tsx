import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, addReference, type Logbook, setTarget } from "#db";
import { addDays } from "#domain";
import { ReviewScreen } from "../../../../src/screens/review/ReviewScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { pick } from "../../../support/pick.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const lapsAbout = (ms: number) => [0, 200, -100, 100, -200, 50].map((off) => ms + off);

/** Combos a week apart, each with two sessions; the first has a reference lap and a target. */
const combos = (count: number) => async (book: Logbook) => {
  for (let n = 0; n < count; n++) {
    const track = { name: `${["Ash", "Birch", "Cedar", "Elm", "Fir", "Larch"][n]} Hill` };
    const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track });
    const date = addDays("2026-09-01", 7 * n);
    await addSessions(book, comboId, [
      { date, laps: lapsAbout(90_000 + 1000 * n) },
      { date: addDays(date, 1), laps: lapsAbout(89_000 + 1000 * n) },
    ]);
    if (n > 0) continue;
    await addReference(book, { comboId, ms: 80_000, decimals: 3, source: "a friend" });
    await setTarget(book, { comboId, kind: "best", value: 88_000, by: "2026-12-24", setOn: "2026-09-02" });
  }
};
const across = <ReviewScreen />;
const list = () => screen.findByRole("list", { name: /^All combos, sorted by/ });
const rowOf = async (name: RegExp) => {
  const row = within(await list())
    .getByRole("link", { name })
    .closest("li");
  if (row === null) throw new Error("each combo stands in a row");
  return row;
};
const namesIn = (of: HTMLElement) =>
  within(of)
    .getAllByRole("link")
    .map((link) => link.textContent?.split(" ")[0]);

describe("Review across combos", () => {
  it("with an empty ledger says what it needs, and asks for no reference lap", async () => {
    await renderAt("#/review/across", across);
    expect(await screen.findByText(/^Nothing to compare yet/)).toBeVisible();
    expect(screen.getByRole("link", { name: "Start one in Log" })).toHaveAttribute("href", "#/log");
    expect(screen.queryByRole("button", { name: "Enter a reference lap" })).not.toBeInTheDocument();
  });

  it("says what is missing for a finding while the combos are few", async () => {
    await renderAt("#/review/across", across, combos(2));
    expect(
      await screen.findByRole("heading", {
        level: 2,
        name: "How much laps differ, combo by combo",
      }),
    ).toBeVisible();
    expect(
      screen.getByText(/cannot be told yet: not enough combos with this figure yet: 2 of 5\.$/),
    ).toBeVisible();
  });

  it("begins with what compares circuits where most combos have under four sessions, the one driven last first", async () => {
    await renderAt("#/review/across", across, combos(3));
    expect(namesIn(await list())).toEqual(["Cedar", "Birch", "Ash"]);
    expect(screen.getByRole("radio", { name: "from circuit to circuit" })).toBeChecked();
    const ash = await rowOf(/^Ash Hill/);
    // 88.8 s over 80 s is 11 % over the reference; the usual lap of 89.025 s lies 0.25 % over the PB.
    expect(ash).toHaveTextContent("+11.00 %");
    expect(ash).toHaveTextContent("0.25 %");
    expect(ash).toHaveTextContent("100 %");
    expect(within(ash).getByRole("link").getAttribute("href")).toMatch(
      /^#\/review\/[0-9a-f-]{36}\?period=all$/,
    );
  });

  it("sorts by what the driver asks, and keeps what is not known last", async () => {
    const { user } = await renderAt("#/review/across", across, combos(3));
    pick(await screen.findByLabelText("Sorted by"), "to the reference, worst first");
    expect(namesIn(await list())[0]).toBe("Ash");
    await user.click(screen.getByRole("radio", { name: "over the weeks" }));
    expect(screen.getByLabelText("Sorted by")).toHaveDisplayValue("driven last");
    expect(namesIn(await list())).toEqual(["Cedar", "Birch", "Ash"]);
    pick(screen.getByLabelText("Sorted by"), "furthest from target");
    expect(namesIn(await list())[0]).toBe("Ash");
  });

  it("shows two sessions as two dots, with how far it is to the target and when it was driven last", async () => {
    const { user } = await renderAt("#/review/across", across, combos(1));
    await user.click(await screen.findByRole("radio", { name: "over the weeks" }));
    const row = await rowOf(/^Ash Hill/);
    expect(row).toHaveTextContent("too few 2 of 4 sessions");
    expect(row).toHaveTextContent("0.80 s to target");
    expect(row).toHaveTextContent("2 Sep");
    const [line, band, dots] = [...row.querySelectorAll("svg path")];
    expect(line?.getAttribute("d")?.match(/h0/g)).toHaveLength(2);
    expect([band, dots]).toEqual([undefined, undefined]);
  });

  it("begins with the weeks where combos have a level, the one that gained most first when asked", async () => {
    await renderAt("#/review/across", across, async (book) => {
      for (const [track, gain] of [
        ["Ash Hill", 300],
        ["Birch Hill", 0],
      ] as const) {
        const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: track } });
        const days = Array.from({ length: 8 }, (_, week) => addDays("2026-09-28", 7 * week));
        await addSessions(
          book,
          comboId,
          days.map((date, week) => ({
            date: gain === 0 ? addDays(date, 1) : date,
            laps: lapsAbout(90_000 - gain * week + (week % 2) * 40),
          })),
        );
      }
    });
    expect(await screen.findByRole("radio", { name: "over the weeks" })).toBeChecked();
    expect(namesIn(await list())).toEqual(["Birch", "Ash"]);
    pick(screen.getByLabelText("Sorted by"), "gained most");
    expect(namesIn(await list())).toEqual(["Ash", "Birch"]);
    const [ash, birch] = [await rowOf(/^Ash/), await rowOf(/^Birch/)];
    expect(ash).toHaveTextContent(/−\d\.\d\d s faster, very likely \d\.\d\d to \d\.\d\d s/);
    expect(ash.querySelector("path[class*=line]")).not.toHaveClass(/Ink/);
    expect(birch).toHaveTextContent("may be chance");
    expect(birch.querySelector("path[class*=line]")?.getAttribute("class")).toMatch(/lineInk/);
  });

  it("another figure is charted at its choice, and the keyboard opens a combo from the chart", async () => {
    const { user } = await renderAt("#/review/across", across, combos(6));
    await user.click(await screen.findByRole("radio", { name: "mistakes" }));
    const chart = await screen.findByRole("figure", {
      name: /^Mistakes from combo to combo: no change/,
    });
    chart.focus();
    await user.keyboard("{End}");
    expect(
      screen.getAllByText(/^Larch Hill · club hatch, first driven Tue 6 Oct 2026: 0\.0/),
    ).not.toHaveLength(0);
    await user.keyboard("{Enter}");
    expect(window.location.hash).toMatch(/^#\/review\/[0-9a-f-]{36}\?period=all$/);
  });
});

describe("Reference laps", () => {
  it("one is entered with where it comes from, and the distance to it stands in the table", async () => {
    const { user } = await renderAt("#/review/across", across, combos(2));
    await user.click(await screen.findByRole("button", { name: "Enter a reference lap" }));
    const form = screen.getByRole("form", { name: "New reference lap" });
    expect(within(form).getByLabelText("Combo")).toHaveFocus();
    await user.type(within(form).getByLabelText("Lap time"), "1:20.000");
    await user.click(within(form).getByRole("button", { name: "Store it" }));
    expect(within(form).getByLabelText("Where it comes from")).toHaveFocus();
    expect(within(form).getByLabelText("Where it comes from")).toHaveAccessibleDescription(
      /where the time comes from/,
    );
    await user.type(within(form).getByLabelText("Where it comes from"), "Ida, last spring{Enter}");
    expect(await screen.findByText("Ida, last spring")).toBeVisible();
    await waitFor(() => expect(screen.getByRole("button", { name: "Enter a reference lap" })).toHaveFocus());
    // Birch Hill was driven last: its PB is 1:29.800.
    await waitFor(async () => expect(await rowOf(/^Birch/)).toHaveTextContent("+12.25 %"));
  });

  it("one is put right, and one deleted comes back by undo", async () => {
    const { user } = await renderAt("#/review/across", across, combos(1));
    await user.click(await screen.findByRole("button", { name: /^Edit: reference lap 1:20\.000/ }));
    const time = screen.getByLabelText("Lap time");
    expect(time).toHaveValue("1:20.000");
    await user.clear(time);
    await user.type(time, "1:21.5{Enter}");
    await user.click(await screen.findByRole("button", { name: /^Delete: reference lap about 1:21\.5/ }));
    expect(await screen.findByText("No reference lap yet.")).toBeVisible();
    await user.click(screen.getAllByRole("button", { name: "Undo" }).at(-1) as HTMLElement);
    expect(await screen.findByText("about 1:21.5")).toBeVisible();
  });

  it("a half-typed one outlives a reload", async () => {
    const { user, reload } = await renderAt("#/review/across", across, combos(1));
    await user.click(await screen.findByRole("button", { name: "Enter a reference lap" }));
    await user.type(screen.getByLabelText("Lap time"), "1:19");
    reload();
    await user.click(await screen.findByRole("button", { name: "Enter a reference lap" }));
    await waitFor(() => expect(screen.getByLabelText("Lap time")).toHaveValue("1:19"));
  });
});
