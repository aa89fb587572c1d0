import { screen, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, addRig, type Logbook } from "#db";
import { addDays } from "#domain";
import { ReviewScreen } from "../../../../src/screens/review/ReviewScreen.tsx";
import { addSessions, type PastSession } from "../../../support/addSessions.ts";
import { pick } from "../../../support/pick.ts";
import { renderAt } from "../../../support/renderAt.tsx";

/** The day on which `renderAt` stands. */
const today = "2026-11-25";
const hatch = { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } };

/** Twelve laps about a time, scattered by tenths times `spread`. */
const lapsAbout = (ms: number, spread = 1) =>
  [0, 2, -1, 1, -2, 0.5, 1.5, -0.5, 0.7, -2, 0.5, 1].map((off) => Math.round(ms + 100 * spread * off));

/** Two sessions a week, the last yesterday; the laps of the session so many before it. */
function twiceAWeek(count: number, lapsOf: (before: number) => number[]): PastSession[] {
  return Array.from({ length: count }, (_, index) => {
    const before = count - 1 - index;
    return { date: addDays(today, -1 - Math.round(3.5 * before)), laps: lapsOf(before) };
  });
}

const filled = (sessions: readonly PastSession[]) => async (book: Logbook) => {
  const { comboId } = await addCombo(book, hatch);
  await addSessions(book, comboId, sessions);
};
const show = (sessions: readonly PastSession[], period = "4w") =>
  renderAt(`#/review?period=${period}`, <ReviewScreen />, filled(sessions));
const question = (name: RegExp) => screen.findByRole("button", { name });

describe("the questions of the review", () => {
  it("stand folded with their answers where nothing changed clearly, and draw nothing yet", async () => {
    await show(twiceAWeek(16, (at) => lapsAbout(84_000 + (at % 2) * 40)));
    expect(
      await question(/^Am I getting steadier\?Not getting steadier or less steady so far/),
    ).toHaveAttribute("aria-expanded", "false");
    expect(await question(/^Where does the time go\?/)).toHaveAttribute("aria-expanded", "false");
    expect(await question(/^What was different\?Usual lap the same as in the 4 weeks before/)).toBeVisible();
    expect(await question(/^How much did I practise\?8 sessions, 96 laps/)).toBeVisible();
    await screen.findByRole("figure", { name: /^Usual lap not clearly faster or slower/ });
    expect(screen.getAllByRole("figure")).toHaveLength(1);
  });

  it("open the one with the largest clear change: here the pace against the weeks before", async () => {
    await show(twiceAWeek(16, (at) => lapsAbout(at < 8 ? 83_000 : 84_000)));
    const open = await screen.findAllByRole("button", { expanded: true, name: /\?/ });
    expect(open.map((one) => one.textContent)).toEqual([
      expect.stringMatching(/^Am I getting faster\?/),
      expect.stringMatching(/^Where does the time go\?/),
    ]);
    expect(
      await screen.findByRole("figure", {
        name: /^Mean lap faster by 1\.00 s than in the 4 weeks before; pace moved most: −1\.00 s, very likely/,
      }),
    ).toBeInTheDocument();
  });

  it("answer what was different with a distribution and a shift counted by session", async () => {
    const { user } = await show(twiceAWeek(16, (at) => lapsAbout(at < 8 ? 83_000 : 84_000)));
    await user.click(await question(/^What was different\?/));
    const name = /^Pace laps now beside those of the 4 weeks before\. Usual lap faster by 1\.00 s than/;
    expect(await screen.findByRole("figure", { name })).toBeInTheDocument();
    expect(screen.getByText(/8 against 8 sessions.*laps of one session are alike/)).toBeVisible();
    expect(
      screen.getByText(/A pace lap now beats one of the 4 weeks before: more than 19 chances/),
    ).toBeVisible();
  });

  it("say what one evening tells, what stays overnight and where the spread comes from", async () => {
    const { user } = await show(twiceAWeek(16, (at) => lapsAbout(84_000 + (at % 2) * 40)));
    expect(await screen.findByText(/^24 Nov was an evening like others: 0\.0\d s/)).toBeVisible();
    await user.click(await question(/^How much did I practise\?/));
    const overnight = await screen.findByRole("figure", {
      name: /^An evening begins .* than the one before ended/,
    });
    expect(overnight).toBeInTheDocument();
    await user.click(await question(/^Am I getting steadier\?/));
    const spread = /^Where the spread comes from: Not enough sessions with 2 pace runs each yet: 0 of 6$/;
    expect(await screen.findByRole("heading", { name: spread })).toBeVisible();
  });

  it("offer no comparison where there is too little before", async () => {
    const { user } = await show(twiceAWeek(6, () => lapsAbout(84_000)));
    await user.click(await question(/^Where does the time go\?/));
    await user.click(await question(/^What was different\?/));
    expect(await screen.findByRole("figure", { name: /^How the pace laps spread/ })).toBeInTheDocument();
    expect(screen.queryByText(/compared|weeks before/i)).not.toBeInTheDocument();
  });

  it("stand open as they were left, on the next visit too", async () => {
    const { user, reload } = await show(twiceAWeek(6, () => lapsAbout(84_000)));
    await user.click(await question(/^How much did I practise\?/));
    await user.click(await question(/^Am I getting faster\?/));
    reload();
    expect(await question(/^How much did I practise\?/)).toHaveAttribute("aria-expanded", "true");
    expect(await question(/^Am I getting faster\?/)).toHaveAttribute("aria-expanded", "false");
  });

  it("each have a small picture while they are hidden", async () => {
    const { user } = await show(twiceAWeek(16, (at) => lapsAbout(84_000 + (at % 2) * 40)));
    await user.click(await question(/^Am I getting faster\?/));
    for (const name of [/faster\?/, /steadier\?/, /time go\?/, /different\?/, /practise\?/])
      expect((await question(name)).querySelectorAll("svg"), String(name)).toHaveLength(1);
  });

  it("with three sessions still say what can be said", async () => {
    const { user } = await show(twiceAWeek(3, () => lapsAbout(84_000)));
    await user.click(
      await question(/^Am I getting steadier\?Not enough sessions with 5 exact pace laps each yet: 3 of 5/),
    );
    expect(
      await screen.findByRole("figure", { name: /^100 % of timed laps clean, between/ }),
    ).toBeInTheDocument();
    await user.click(await question(/^How much did I practise\?3 sessions, 36 laps/));
    expect(await screen.findByRole("figure", { name: /^3 sessions, 36 laps/ })).toBeInTheDocument();
  });

  it("let a pointed-at lap be marked, which takes it out of the pace laps, or be put back", async () => {
    const laps = [...lapsAbout(84_000, 0.3).slice(0, 11), 90_000];
    const { user } = await show([{ date: addDays(today, -1), laps }]);
    await user.click(await question(/^What was different\?/));
    const chart = await screen.findByRole("heading", { name: "1 of 12 pace laps worth a second look" });
    expect(chart).toBeVisible();
    pick(screen.getByRole("combobox", { name: "What lap 12 was" }), "spin");
    await user.click(screen.getByRole("button", { name: "Mark lap 12" }));
    expect(await screen.findByRole("heading", { name: "None of 11 pace laps stands out" })).toBeVisible();
    expect(await screen.findByText(/of 12 laps: 11 pace, 1 with a mistake/)).toBeVisible();
    await user.click(screen.getByRole("button", { name: /^Undo/ }));
    expect(
      await screen.findByRole("heading", { name: "1 of 12 pace laps worth a second look" }),
    ).toBeVisible();
  });

  it("ask about the rig only where a change of it was driven through, and lead to its record", async () => {
    const parts = { screen: {}, view: {}, pedals: {}, seat: {}, note: "" };
    const sessions = twiceAWeek(12, (before) => lapsAbout(before < 6 ? 83_000 : 84_000));
    const { user } = await renderAt("#/review?period=12w", <ReviewScreen />, async (book) => {
      await filled(sessions)(book);
      await addRig(book, { ...parts, from: "2026-09-01", name: "", wheel: { gainPercent: 72 } });
      const from = addDays(today, -20);
      await addRig(book, { ...parts, from, name: "Lower gain", wheel: { gainPercent: 54 } });
    });
    await user.click(await question(/^Did the rig help\?Lower gain: faster by/));
    const table = await screen.findByRole("table", { name: "Changes of the rig, the newest first" });
    expect(table).toHaveTextContent(/Faster by .* \(from the weeks before and after; not a test\)$/);
    expect(within(table).getByRole("link", { name: "Lower gain" }).getAttribute("href")).toMatch(/^#\/rig\//);
  });

  it("do not ask about the rig where it never changed", async () => {
    await show(twiceAWeek(4, () => lapsAbout(84_000)));
    await question(/^How much did I practise\?/);
    expect(screen.queryByRole("button", { name: /^Did the rig help/ })).toBeNull();
  });

  it("are one press from the sessions, and so from the laps", async () => {
    const { user } = await show(twiceAWeek(3, () => lapsAbout(84_000)));
    const [first] = await screen.findAllByRole("button", { name: "See the sessions" });
    if (first === undefined) throw new Error("there is a way to the sessions");
    await user.click(first);
    const focused = document.activeElement as HTMLElement;
    expect(within(focused).getByRole("table", { name: "Sessions, newest first" })).toBeInTheDocument();
  });
});
