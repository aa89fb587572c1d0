import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, type Logbook, setTarget } from "#db";
import { type Ask, askHere } from "#live";
import { TargetsScreen } from "../../../../src/screens/targets/TargetsScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const targets = <TargetsScreen />;
const at = (date: string) => Date.parse(`${date}T12:00:00Z`);
const evenings = ["2026-11-04", "2026-11-07", "2026-11-11", "2026-11-14", "2026-11-18", "2026-11-21"];

/** Sessions of ten laps, each a quarter of a second faster than the one before. */
const sessions = (count: number) => async (book: Logbook) => {
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const laps = (number: number) =>
    Array.from({ length: 10 }, (_, lap) => 85_500 - 250 * number + ((lap * 37 + number * 11) % 40) * 10);
  const dated = evenings.slice(0, count).map((date, number) => ({ date, laps: laps(number) }));
  await addSessions(book, comboId, dated);
  return comboId;
};
const withTarget =
  (count: number, value: number, by = "2026-12-13") =>
  async (book: Logbook) => {
    const comboId = await sessions(count)(book);
    const setOn = "2026-11-05";
    await setTarget(book, { comboId, kind: "best", value, by, setOn, setAt: at(setOn), start: 85_500 });
  };
const chance = /^[A-Z].* by Sun 13 Dec 2026: .*chances? in 20\.$/;
const unfold = async (user: Awaited<ReturnType<typeof renderAt>>["user"]) =>
  user.click(await screen.findByRole("button", { name: /^Steps, and what it rests on/ }));

describe("the outlook of an open target", () => {
  it("tells the chance and the likely days, and behind them the steps and what it rests on", async () => {
    const { user } = await renderAt("#/targets", targets, withTarget(6, 83_400));
    expect(await screen.findByText(chance)).toBeVisible();
    expect(screen.getByText(/^As likely as not by .*, (very likely by|not yet very likely)/)).toBeVisible();
    await unfold(user);
    expect(screen.getByText(/^Steps? on the way: 1:2\d\.\d{3} by /)).toBeVisible();
    expect(
      screen.getByText(/^1:25\.500 on Thu 5 Nov 2026, when it was set · 1:2\d\.\d{3} now\.$/),
    ).toBeVisible();
    expect(
      screen.getByText(
        /^From 6 sessions, and \d+ more by then: \d\.\d a week of 10 timed laps, as driven since .* 2026\.$/,
      ),
    ).toBeVisible();
  });

  it("says the same after a reload", async () => {
    const { reload } = await renderAt("#/targets", targets, withTarget(6, 83_700));
    const said = (await screen.findByText(chance)).textContent;
    reload();
    expect(await screen.findByText(chance)).toHaveTextContent(said);
  });

  it("a target out of reach is very unlikely, never impossible", async () => {
    await renderAt("#/targets", targets, withTarget(6, 60_000));
    expect(await screen.findByText(chance)).toHaveTextContent(
      "Very unlikely by Sun 13 Dec 2026: fewer than 1 chance in 20.",
    );
    expect(screen.getByText("Very unlikely within a year.")).toBeVisible();
  });

  it("shows the way as a picture, which says itself in words", async () => {
    await renderAt("#/targets", targets, withTarget(6, 83_400));
    expect(await screen.findByRole("img", { name: /^The way from/ })).toHaveAccessibleName(
      /^The way from 1:25\.500 on Thu 5 Nov 2026 to 1:2\d\.\d{3} now; wanted 1:23\.400 by Sun 13 Dec 2026$/,
    );
  });

  it("draws twenty dots, as many of them in time as there are chances", async () => {
    await renderAt("#/targets", targets, withTarget(6, 83_700));
    const said = (await screen.findByText(chance)).textContent;
    const told = Number(/(\d+) chances? in 20/.exec(said)?.[1]);
    const dots = [...document.querySelectorAll("[data-dot]")];
    expect(dots).toHaveLength(20);
    expect(dots.filter((dot) => dot.getAttribute("data-dot") === "in time")).toHaveLength(told);
    expect(told).toBeGreaterThan(0);
  });

  it("says how many sessions are missing", async () => {
    await renderAt("#/targets", targets, withTarget(2, 84_000));
    expect(
      await screen.findByText("No forecast yet: it needs 3 sessions with 5 pace laps each, has 2."),
    ).toBeVisible();
    expect(screen.queryByText(/chances? in 20/)).not.toBeInTheDocument();
  });

  it("says nothing of a chance once the target is reached or its date has passed", async () => {
    await renderAt("#/targets", targets, async (book) => {
      await withTarget(6, 84_900)(book);
      const [comboId = ""] = await book.tables.combos.toCollection().primaryKeys();
      const [setOn, by] = ["2026-11-05", "2026-11-20"];
      await setTarget(book, { comboId, kind: "best", value: 80_000, by, setOn, setAt: at(setOn) });
    });
    expect(await screen.findByText(/^Reached on /)).toBeVisible();
    expect(screen.getByText(/^Missed\./)).toBeVisible();
    expect(screen.queryByText(/chances? in 20/)).not.toBeInTheDocument();
  });
});

const openForm = async (user: Awaited<ReturnType<typeof renderAt>>["user"]) => {
  await user.click(await screen.findByRole("button", { name: "Set a target" }));
  return within(screen.getByRole("form", { name: "New target" }));
};

describe("a value that is tried", () => {
  it("shows its chance while it is typed, one question on its way at a time", async () => {
    let [asked, most] = [0, 0];
    let open = 0;
    const counting: Ask = async (book, job, details) => {
      if (job !== "targetOutlook") return askHere(book, job, details);
      asked += 1;
      open += 1;
      most = Math.max(most, open);
      // A slow machine: many keys are typed before it answers.
      await new Promise((done) => setTimeout(done, 600));
      open -= 1;
      return askHere(book, job, details);
    };
    const { user } = await renderAt("#/targets", targets, sessions(6), undefined, counting);
    const form = await openForm(user);
    await form.findByText(/Best so far/);
    await user.type(form.getByLabelText("Time to reach"), "1:23.4");
    const chances = within(await form.findByRole("region", { name: "Its chance" }));
    await expect.poll(() => chances.getByText(/^1:23\.\d{3}$/).textContent).toBe("1:23.400");
    expect(chances.getByText(/^[A-Z].* by Wed 23 Dec 2026: .*chances? in 20\.$/)).toBeVisible();
    await user.type(form.getByLabelText("Time to reach"), "56");
    await expect.poll(() => chances.getByText(/^1:23\.\d{3}$/).textContent).toBe("1:23.456");
    expect(most).toBe(1);
    expect(asked).toBeLessThan(9);
    // Nothing is left of it when it is no time any more.
    await user.type(form.getByLabelText("Time to reach"), "x");
    expect(form.queryByRole("region", { name: "Its chance" })).not.toBeInTheDocument();
  });

  it("says the same chance once it is set", async () => {
    const { user } = await renderAt("#/targets", targets, sessions(6));
    const form = await openForm(user);
    await form.findByText(/Best so far/);
    await user.type(form.getByLabelText("Time to reach"), "1:23.400");
    const tried = (
      await form.findByText(/ by Wed 23 Dec 2026: .*chances? in 20\.$/, { selector: "section *" })
    ).textContent;
    await user.click(form.getByRole("button", { name: "Set target" }));
    await waitFor(async () =>
      expect(await screen.findByRole("heading", { level: 3, name: "best lap 1:23.400" })).toHaveFocus(),
    );
    expect(await screen.findByText(tried)).toBeVisible();
  });
});

describe("suggestions in the form", () => {
  it("a fair target goes into the field at one press, and is forecast as it was said", async () => {
    const { user } = await renderAt("#/targets", targets, sessions(6));
    const form = await openForm(user);
    const [fair, stretch] = await form.findAllByRole("button", { name: /^Take 1:2\d\.\d\d$/ });
    if (fair === undefined || stretch === undefined) throw new Error("two targets are suggested");
    const line = form.getByText("A fair target by that date:").parentElement;
    expect(line).toHaveTextContent(
      /^A fair target by that date: 1:2\d\.\d\d \(10 chances in 20\); a stretch: 1:2\d\.\d\d \(4 chances in 20\)\.$/,
    );
    await user.click(fair);
    expect(form.getByLabelText("Time to reach")).toHaveValue(`${fair.textContent}0`);
    expect(fair).toHaveAttribute("aria-pressed", "true");
    await user.click(stretch);
    expect(form.getByLabelText("Time to reach")).toHaveValue(`${stretch.textContent}0`);
    const set = form.getByRole("button", { name: "Set target" });
    await expect.poll(() => set).toBeEnabled();
    await user.click(set);
    expect(await screen.findByText(/: 4 chances in 20\.$/)).toBeVisible();
  });

  it("follows the figure and the date", async () => {
    const { user } = await renderAt("#/targets", targets, sessions(6));
    const form = await openForm(user);
    const best = (await form.findAllByRole("button", { name: /^Take/ }))[0]?.textContent ?? "";
    await user.click(form.getByRole("radio", { name: "usual lap" }));
    await expect
      .poll(() => form.queryAllByRole("button", { name: /^Take/ })[0]?.textContent ?? best)
      .not.toBe(best);
    await user.clear(form.getByLabelText("By"));
    expect(form.queryByText(/A fair target/)).not.toBeInTheDocument();
    await user.type(form.getByLabelText("By"), "2029-01-01");
    expect(await form.findByText("No forecast looks further than a year.")).toBeVisible();
  });

  it("says how many sessions are missing", async () => {
    const { user } = await renderAt("#/targets", targets, sessions(1));
    const form = await openForm(user);
    expect(
      await form.findByText("No forecast yet: it needs 3 sessions with 5 pace laps each, has 1."),
    ).toBeVisible();
  });
});
