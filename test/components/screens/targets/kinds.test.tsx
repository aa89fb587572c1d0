import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, type Logbook, openLogbook, setTarget } from "#db";
import { useDevice } from "#state/device.ts";
import { TargetsScreen } from "../../../../src/screens/targets/TargetsScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const targets = <TargetsScreen />;

/** Four sessions of ten clean laps, each a quarter of a second faster than the one before. */
async function fourSessions(book: Logbook): Promise<string> {
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const laps = (number: number) =>
    Array.from({ length: 10 }, (_, lap) => 84_500 - 250 * number + (lap % 2) * 200);
  await addSessions(
    book,
    comboId,
    ["2026-11-11", "2026-11-14", "2026-11-18", "2026-11-21"].map((date, number) => ({
      date,
      laps: laps(number),
    })),
  );
  return comboId;
}
type User = Awaited<ReturnType<typeof renderAt>>["user"];
async function openForm(user: User) {
  await user.click(await screen.findByRole("button", { name: "Set a target" }));
  return within(screen.getByRole("form", { name: "New target" }));
}
async function press(user: User, form: Awaited<ReturnType<typeof openForm>>) {
  const set = form.getByRole("button", { name: "Set target" });
  await waitFor(() => expect(set).toBeEnabled());
  await user.click(set);
}

describe("targets of all kinds", () => {
  it("a mean of laps in a row has a chance while it is typed and once it is set, and suggestions", async () => {
    const { user } = await renderAt("#/targets", targets, fourSessions);
    const form = await openForm(user);
    await user.click(form.getByRole("radio", { name: "mean of laps in a row" }));
    const laps = form.getByLabelText("Laps in a row");
    expect(laps).toHaveValue("5");
    await user.clear(laps);
    await user.type(laps, "4");
    // Two laps of 1:23.750 and two of 1:23.950.
    expect(await form.findByText(/^Best mean of 4 laps so far 1:23\.850\./)).toBeVisible();
    expect(await form.findAllByRole("button", { name: /^Take/ })).not.toHaveLength(0);
    await user.type(form.getByLabelText("Time to reach"), "1:23.500");
    const tried = await form.findByText(/ by Wed 23 Dec 2026: .*chances? in 20\.$/, {
      selector: "section *",
    });
    const said = tried.textContent;
    await press(user, form);
    expect(await screen.findByRole("heading", { level: 3, name: "mean of 4 laps 1:23.500" })).toBeVisible();
    expect(await screen.findByText(said)).toBeVisible();
    expect(await screen.findByRole("img", { name: /^The way from 1:23\.850/ })).toBeVisible();
  });

  it("a scatter and a share of clean laps are followed, not forecast", async () => {
    const { user } = await renderAt("#/targets", targets, fourSessions);
    let form = await openForm(user);
    await user.click(form.getByRole("radio", { name: "scatter" }));
    expect(form.getByText(/^A scatter and a share of clean laps are followed, not forecast/)).toBeVisible();
    // Every difference is 0.2 s: its square halved is 0.02, the root of that 0.14.
    expect(await form.findByText(/^Scatter of your last session ± 0\.14 s\./)).toBeVisible();
    await user.type(form.getByLabelText("Scatter to reach"), "0.1");
    await press(user, form);
    expect(await screen.findByRole("heading", { level: 3, name: "scatter ± 0.10 s" })).toBeVisible();
    expect(await screen.findByRole("progressbar", { name: "28 days left." })).toHaveAttribute(
      "aria-valuetext",
      "0 % of the way, 0.04 s to go",
    );
    form = await openForm(user);
    await user.click(form.getByRole("radio", { name: "share of clean laps" }));
    await user.type(form.getByLabelText("Share to reach"), "90");
    expect(await form.findByText(/^Share of clean laps of your last session 100\.0 %\./)).toBeVisible();
    await press(user, form);
    expect(await form.findAllByText(/is 100\.0 % already: is 90\.0 % meant/)).not.toHaveLength(0);
    expect(screen.queryByText(/chances? in 20/)).not.toBeInTheDocument();
  });

  it("what is written about one stands with it, and what it was before is told", async () => {
    const { user, reload } = await renderAt("#/targets", targets, async (book) => {
      const comboId = await fourSessions(book);
      const [setOn, by] = ["2026-11-12", "2026-12-13"];
      await setTarget(book, { comboId, kind: "best", value: 83_500, by, setOn, setAt: Date.parse(setOn) });
    });
    await user.click(await screen.findByRole("button", { name: /^Edit: Best lap 1:23\.500/ }));
    const form = within(screen.getByRole("form", { name: "Change the target" }));
    const value = form.getByLabelText("Time to reach");
    await user.clear(value);
    await user.type(value, "1:23.600");
    await user.type(form.getByLabelText("What it is for, if you like"), "The club race");
    await user.type(form.getByLabelText("Note, if you like"), "With the new tyres");
    const store = form.getByRole("button", { name: "Store changes" });
    await waitFor(() => expect(store).toBeEnabled());
    await user.click(store);
    expect(await screen.findByRole("heading", { level: 3, name: "best lap 1:23.600" })).toBeVisible();
    reload();
    expect(await screen.findByText("The club race")).toBeVisible();
    expect(screen.getByText("With the new tyres")).toBeVisible();
    await user.click(await screen.findByRole("button", { name: /^Changed\s*on Wed 25 Nov 2026/ }));
    expect(screen.getByText("Until Wed 25 Nov 2026: best lap 1:23.500 by Sun 13 Dec 2026")).toBeVisible();
  });

  it("a target changed to another figure starts from that figure as it stood when it was set", async () => {
    const { user, surroundings } = await renderAt("#/targets", targets, async (one) => {
      const comboId = await fourSessions(one);
      const [setOn, by] = ["2026-11-15", "2026-12-13"];
      const setAt = Date.parse("2026-11-15T12:00:00Z");
      await setTarget(one, { comboId, kind: "best", value: 83_500, by, setOn, setAt, start: 84_250 });
    });
    await user.click(await screen.findByRole("button", { name: /^Edit: Best lap 1:23\.500/ }));
    const form = within(screen.getByRole("form", { name: "Change the target" }));
    await user.click(form.getByRole("radio", { name: "mean of laps in a row" }));
    expect(await form.findByText(/^Best mean of 5 laps so far/)).toBeVisible();
    const store = form.getByRole("button", { name: "Store changes" });
    await waitFor(() => expect(store).toBeEnabled());
    await user.click(store);
    await screen.findByRole("heading", { level: 3, name: "mean of 5 laps 1:23.500" });
    const book = await openLogbook({ name: useDevice.getState().logbook ?? "", ...surroundings });
    const [target] = await book.tables.targets.toArray().finally(() => book.close());
    // Three laps of 1:24.250 and two of 1:24.450 in the second session.
    expect(target).toMatchObject({ kind: "meanOf", laps: 5, start: 84_330 });
    expect(target?.earlier).toMatchObject([{ kind: "best", value: 83_500, untilDay: "2026-11-25" }]);
  });
});
