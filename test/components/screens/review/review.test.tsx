import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, type Logbook, setTarget, turnPage } from "#db";
import { addDays } from "#domain";
import { ReviewScreen } from "../../../../src/screens/review/ReviewScreen.tsx";
import { addSessions, type PastSession } from "../../../support/addSessions.ts";
import { renderAt } from "../../../support/renderAt.tsx";

/** The day on which `renderAt` stands. */
const today = "2026-11-25";
const hatch = { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } };
const trainer = { car: { name: "endurance trainer" }, track: { name: "Tessemoor" } };

/** Six laps about a time, 0.1 s apart. */
const lapsAbout = (ms: number) => [0, 200, -100, 100, -200, 50].map((off) => ms + off);

/** Sessions a week apart, the last yesterday, each faster than the one before by `gain` ms. */
function weekly(count: number, gain: number, fields: Partial<PastSession> = {}): PastSession[] {
  return Array.from({ length: count }, (_, index) => ({
    date: addDays(today, -1 - 7 * (count - 1 - index)),
    laps: lapsAbout(85_000 - gain * index),
    ...fields,
  }));
}

const filled = (sessions: readonly PastSession[]) => async (book: Logbook) => {
  const { comboId } = await addCombo(book, hatch);
  await addSessions(book, comboId, sessions);
};

const review = <ReviewScreen />;

describe("Review", () => {
  it("without a combo says what it needs and where to begin", async () => {
    await renderAt("#/review", review);
    expect(await screen.findByRole("heading", { name: "Nothing to review yet" })).toBeInTheDocument();
    expect(screen.getByRole("link", { name: "Start one in Log" })).toHaveAttribute("href", "#/log");
  });

  it("opens on the combo driven last, twelve weeks of it", async () => {
    await renderAt("#/review", review, async (book) => {
      const older = await addCombo(book, trainer);
      const newer = await addCombo(book, hatch);
      await addSessions(book, newer.comboId, [{ date: "2026-11-24", laps: lapsAbout(84_000) }]);
      await addSessions(book, older.comboId, [{ date: "2026-11-20", laps: lapsAbout(60_000) }]);
    });
    expect(
      await screen.findByRole("heading", { level: 1, name: "Varnholt Ring · club hatch" }),
    ).toBeVisible();
    expect(screen.getByRole("link", { name: "12 weeks" })).toHaveAttribute("aria-current", "true");
  });

  it("counts what is dated after tomorrow, with the way to it, and leaves it out of list and axis", async () => {
    await renderAt("#/review", review, async (book) => {
      const { comboId } = await addCombo(book, hatch);
      await addSessions(book, comboId, weekly(6, 100));
      await addSessions(book, comboId, [{ date: "2036-03-04", laps: lapsAbout(80_000) }]);
      const older = await addCombo(book, trainer);
      await addSessions(book, older.comboId, [{ date: "2036-03-05", laps: lapsAbout(60_000) }]);
    });
    expect(
      await screen.findByRole("heading", { level: 1, name: "Varnholt Ring · club hatch" }),
    ).toBeVisible();
    expect(await screen.findByText(/^1 session dated after tomorrow is left out:/)).toHaveTextContent(
      "Tue 4 Mar 2036. Is its date right? Today is Wed 25 Nov 2026 by this device’s clock.",
    );
    expect(screen.getByRole("link", { name: "Tue 4 Mar 2036" })).toHaveAttribute(
      "href",
      expect.stringMatching(/^#\/log\//),
    );
    const list = await screen.findByRole("table", { name: "Sessions, newest first" });
    expect(within(list).getAllByRole("row")).toHaveLength(7);
    expect(within(list).queryByText(/2036/)).toBeNull();
  });

  it("opens on a combo with enough sessions in the period rather than on a newer one with few", async () => {
    await renderAt("#/review", review, async (book) => {
      const few = await addCombo(book, trainer);
      const many = await addCombo(book, hatch);
      await addSessions(book, few.comboId, [{ date: "2026-11-24", laps: lapsAbout(60_000) }]);
      await addSessions(
        book,
        many.comboId,
        weekly(5, 0).map((one) => ({ ...one, date: addDays(one.date, -2) })),
      );
      const old = await addCombo(book, { car: { name: "single-seater" }, track: { name: "Varnholt Ring" } });
      await addSessions(
        book,
        old.comboId,
        weekly(5, 0).map((one) => ({ ...one, date: addDays(one.date, -83) })),
      );
    });
    expect(
      await screen.findByRole("heading", { level: 1, name: "Varnholt Ring · club hatch" }),
    ).toBeVisible();
  });

  it("another combo keeps the period, and the focus stays where it was chosen", async () => {
    const { user } = await renderAt("#/review?period=all", review, async (book) => {
      await addSessions(book, (await addCombo(book, hatch)).comboId, weekly(1, 0));
      await addCombo(book, trainer);
    });
    await user.click(await screen.findByRole("button", { name: "Another combo" }));
    expect(screen.getByText("not driven yet")).toBeVisible();
    await user.click(screen.getByRole("link", { name: "Tessemoor · endurance trainer" }));
    expect(await screen.findByRole("heading", { name: "No session with this combo yet" })).toBeVisible();
    expect(window.location.hash).toMatch(/\?period=all$/);
    await waitFor(() => expect(screen.getByRole("button", { name: "Another combo" })).toHaveFocus());
  });

  it("a combo that gets faster says so, by how much, and how surely", async () => {
    await renderAt("#/review", review, filled(weekly(8, 100)));
    expect(
      await screen.findByRole("heading", {
        level: 2,
        name: /^Usual lap faster by 0\.[67]\d s since \d+ \w+( \d+)?, very likely at least 0\.\d\d s/,
      }),
    ).toBeVisible();
    expect(await screen.findByRole("figure", { name: /^Usual lap faster/ })).toBeInTheDocument();
  });

  it("with three sessions says how many are missing, and what can be said already", async () => {
    await renderAt("#/review", review, filled(weekly(3, 100)));
    expect(
      await screen.findByRole("heading", { name: "Not enough sessions with 5 pace laps each yet: 3 of 4" }),
    ).toBeVisible();
    expect(screen.getByText(/^PB 1:24\.600 since Tue 24 Nov 2026/)).toBeVisible();
  });

  it("counts every lap it leaves out of the figures", async () => {
    const drills: PastSession = { date: "2026-11-23", laps: lapsAbout(95_000), kind: "drill" };
    await renderAt("#/review", review, filled([...weekly(2, 0), drills]));
    expect(await screen.findByText(/^3 sessions · of 18 laps: 12 pace, 6 drill$/)).toBeVisible();
  });

  it("the period in the address decides which sessions count", async () => {
    const sessions = weekly(8, 100);
    const { user } = await renderAt("#/review?period=4w", review, filled(sessions));
    expect(await screen.findByText(/^4 sessions ·/)).toBeVisible();
    await user.click(screen.getByRole("link", { name: "all" }));
    expect(await screen.findByText(/^8 sessions ·/)).toBeVisible();
    expect(window.location.hash).toMatch(/\?period=all$/);
  });

  it("chosen dates the wrong way round are refused at their field, and shown once put right", async () => {
    const { user } = await renderAt("#/review", review, filled(weekly(8, 100)));
    await user.click(await screen.findByRole("button", { name: "dates" }));
    const [first, last] = [screen.getByLabelText("First day"), screen.getByLabelText("Last day")];
    await user.clear(first);
    await user.type(first, "2026-11-20");
    await user.clear(last);
    await user.type(last, "2026-11-01");
    await user.click(screen.getByRole("button", { name: "Show these dates" }));
    expect(last).toHaveAccessibleDescription(/lies before the first/);
    await user.clear(first);
    await user.type(first, "2026-11-12");
    await user.clear(last);
    await user.type(last, "2026-11-20");
    await user.click(screen.getByRole("button", { name: "Show these dates" }));
    expect(await screen.findByText(/^1 session ·/)).toBeVisible();
    expect(window.location.hash).toMatch(/\?from=2026-11-12&to=2026-11-20$/);
  });

  it("a period without a session says when the last one was", async () => {
    await renderAt("#/review?period=4w", review, filled([{ date: "2026-09-01", laps: lapsAbout(84_000) }]));
    expect(await screen.findByRole("heading", { name: "No session in the last 4 weeks" })).toBeVisible();
    expect(screen.getByText(/85 days ago/)).toBeVisible();
    expect(screen.queryByText(/sessions ·|no laps/)).not.toBeInTheDocument();
  });

  it("lists the sessions newest first, thirty at a time, each leading to its page", async () => {
    const ids: string[] = [];
    const { user } = await renderAt("#/review?period=all", review, async (book) => {
      const { comboId } = await addCombo(book, hatch);
      const sessions = weekly(34, 10, { focus: "braking", note: "Brake earlier" });
      ids.push(...(await addSessions(book, comboId, sessions)));
    });
    const table = await screen.findByRole("table", { name: "Sessions, newest first" });
    const links = within(table).getAllByRole("link");
    expect(links).toHaveLength(30);
    expect(links[0]).toHaveAccessibleName("Tue 24 Nov 2026");
    expect(links[0]).toHaveAttribute("href", `#/log/${ids.at(-1)}`);
    expect(await within(table).findAllByText("Brake earlier")).toHaveLength(30);
    await user.click(screen.getByRole("button", { name: "Show 4 more of 4" }));
    expect(within(table).getAllByRole("link")).toHaveLength(34);
    expect(screen.queryByRole("button", { name: /more of/ })).not.toBeInTheDocument();
  });

  it("calls the same lap best and PB, whatever run it was driven in, to the digits it is known to", async () => {
    const faster = { date: "2026-11-24", kind: "drill", decimals: 1, laps: [84_600, 84_200] } as const;
    await renderAt("#/review", review, filled([{ date: "2026-11-20", laps: lapsAbout(85_000) }, faster]));
    const table = await screen.findByRole("table", { name: "Sessions, newest first" });
    expect(within(table).getByRole("row", { name: /^Tue 24 Nov/ })).toHaveTextContent(
      "Tue 24 Nov 2026PB about 1:24.22—about 1:24.2",
    );
  });

  it("draws no curve and no forecast from fewer than four sessions, and says so", async () => {
    const { user } = await renderAt("#/review", review, filled(weekly(3, 200)));
    await user.click(await screen.findByRole("button", { name: /^Trend and forecast/ }));
    expect(screen.getByText("Curve and bands are drawn from 4 sessions with 5 pace laps on.")).toBeVisible();
    expect(screen.queryByText(/inner band/)).not.toBeInTheDocument();
    const chart = await screen.findByRole("figure", { name: /^Not enough sessions/ });
    expect(chart.querySelector("path[class*=bandPale]")?.getAttribute("d")).toBe("");
    expect(chart.querySelector("path[class*=forecast]")?.getAttribute("d")).toBe("");
  });

  it("draws both from four sessions on, at a press, with what the bands mean, and a reload keeps it so", async () => {
    const { user, reload } = await renderAt("#/review", review, filled(weekly(4, 200)));
    const ahead = await screen.findByRole("button", { name: "What is to come" });
    expect(screen.queryByText(/inner band/)).not.toBeInTheDocument();
    await user.click(ahead);
    expect(window.location.hash).toMatch(/\?ahead=1$/);
    reload();
    expect((await screen.findAllByText(/inner band/))[0]).toBeVisible();
    const chart = await screen.findByRole("figure", { name: /^Usual lap/ });
    expect(chart.querySelector("path[class*=bandPale]")?.getAttribute("d")).toMatch(/^M.+Z$/);
  });

  it("the keyboard walks the chart and opens a session", async () => {
    const { user } = await renderAt("#/review", review, filled(weekly(6, 100)));
    (await screen.findByRole("figure", { name: /^Usual lap/ })).focus();
    await user.keyboard("{End}");
    expect(screen.getAllByText(/Tuesday 24 November: usual 1:24\.525/)).not.toHaveLength(0);
    await user.keyboard("{Enter}");
    expect(window.location.hash).toMatch(/^#\/log\/[0-9a-f-]{36}$/);
  });

  it("a personal best from before the period is drawn, with the day it was driven", async () => {
    const { user } = await renderAt("#/review?period=4w", review, filled(weekly(8, -100)));
    (await screen.findByRole("figure", { name: /^Usual lap/ })).focus();
    await user.keyboard("{Home}{ArrowDown}");
    expect(
      screen.getAllByText(/Tuesday 3 November: personal best 1:24\.800, driven Tuesday 6 October/),
    ).not.toHaveLength(0);
  });

  it("among many combos one is found by typing a part of its name", async () => {
    const { user } = await renderAt("#/review", review, async (book) => {
      await addSessions(book, (await addCombo(book, hatch)).comboId, weekly(1, 0));
      for (const name of ["Ash", "Birch", "Cedar", "Elm", "Fir", "Hazel", "Larch"])
        await addCombo(book, { car: { name: "club hatch" }, track: { name: `${name} Hill` } });
    });
    await user.click(await screen.findByRole("button", { name: "Another combo" }));
    await user.type(screen.getByRole("combobox", { name: "Combo" }), "cedar{ArrowDown}{Enter}");
    expect(await screen.findByRole("heading", { level: 1, name: "Cedar Hill · club hatch" })).toBeVisible();
  });

  it("older pages are told apart and stand in no figure", async () => {
    await renderAt("#/review", review, async (book) => {
      const { comboId } = await addCombo(book, hatch);
      await addSessions(book, comboId, weekly(6, 100));
      const from = Date.parse("2026-11-15T00:00:00Z");
      await turnPage(book, { comboIds: [comboId], from, reason: "new tyre model" });
    });
    expect(await screen.findByText(/^2 sessions · .* · 4 sessions of older pages/)).toBeVisible();
    expect(screen.getAllByText("older page")).toHaveLength(4);
  });

  it("a lap stored meanwhile renews the figures without a reload", async () => {
    let book: Logbook | undefined;
    let combo = "";
    await renderAt("#/review", review, async (filling) => {
      book = filling;
      combo = (await addCombo(filling, hatch)).comboId;
      await addSessions(filling, combo, weekly(2, 0));
      await setTarget(filling, { comboId: combo, kind: "best", value: 80_000, setOn: today });
    });
    expect(await screen.findByText(/^2 sessions ·/)).toBeVisible();
    const { openLogbook } = await import("#db");
    const clock = () => Date.parse("2026-11-25T19:00:00Z");
    const again = await openLogbook({ name: book?.name ?? "", clock, newId: book?.newId ?? (() => "") });
    await addSessions(again, combo, [{ date: today, laps: lapsAbout(84_000) }]);
    expect(await screen.findByText(/^3 sessions ·/)).toBeVisible();
    again.close();
  });
});
