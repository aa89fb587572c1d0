import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, type Logbook, setTarget, turnPage } from "#db";
import { TargetsScreen } from "../../../../src/screens/targets/TargetsScreen.tsx";
import { addSessions } from "../../../support/addSessions.ts";
import { renderAt } from "../../../support/renderAt.tsx";

const hatch = { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } };
const targets = <TargetsScreen />;
const at = (date: string) => Date.parse(`${date}T12:00:00Z`);

/** Three sessions: bests 1:24.000, 1:23.400 and 1:23.200; medians 1:24.200, 1:23.600 and 1:23.400. */
async function threeSessions(book: Logbook): Promise<string> {
  const { comboId } = await addCombo(book, hatch);
  const laps = (best: number) => [0, 100, 200, 300, 400].map((more) => best + more);
  await addSessions(book, comboId, [
    { date: "2026-11-04", laps: laps(84_000) },
    { date: "2026-11-11", laps: laps(83_400) },
    { date: "2026-11-18", laps: laps(83_200) },
  ]);
  return comboId;
}

const withTarget = (target: Partial<Parameters<typeof setTarget>[1]>) => async (book: Logbook) => {
  const comboId = await threeSessions(book);
  await setTarget(book, {
    comboId,
    kind: "best",
    value: 83_000,
    by: "2026-12-05",
    setOn: "2026-11-05",
    setAt: at("2026-11-05"),
    start: 84_000,
    ...target,
  });
};

async function openForm(user: Awaited<ReturnType<typeof renderAt>>["user"]) {
  await user.click(await screen.findByRole("button", { name: "Set a target" }));
  const form = screen.getByRole("form", { name: "New target" });
  await within(form).findByText(/Best so far 1:23\.200/);
  // What raises a question has been read by then; before, it cannot be set.
  await waitFor(() => expect(within(form).getByRole("button", { name: "Set target" })).toBeEnabled());
  return within(form);
}

const unfold = async (user: Awaited<ReturnType<typeof renderAt>>["user"]) =>
  user.click(await screen.findByRole("button", { name: /^Steps, and what it rests on/ }));

describe("setting a target", () => {
  it("takes the last digits of a time, and starts from the PB of the day", async () => {
    const { user } = await renderAt("#/targets", targets, threeSessions);
    const form = await openForm(user);
    await user.type(form.getByLabelText("Time to reach"), "2950");
    expect(form.getByText("1:22.950 ·")).toBeVisible();
    await user.type(form.getByLabelText(/One thing to do/), "Brake later for corner 5");
    await user.click(form.getByRole("button", { name: "Set target" }));
    const heading = await screen.findByRole("heading", { level: 3, name: "best lap 1:22.950" });
    expect(heading).toBeVisible();
    await waitFor(() => expect(heading).toHaveFocus());
    expect(screen.getByText("Brake later for corner 5")).toBeVisible();
    expect(await screen.findByRole("progressbar", { name: "28 days left." })).toHaveAttribute(
      "aria-valuetext",
      "0 % of the way, 0.250 s to go",
    );
    await unfold(user);
    expect(screen.getByText(/^1:23\.200 on Wed 25 Nov 2026, when it was set/)).toBeVisible();
  });

  it("says at its field what is wrong, keeps the text, and takes the focus there", async () => {
    const { user } = await renderAt("#/targets", targets, threeSessions);
    const form = await openForm(user);
    const time = form.getByLabelText("Time to reach");
    await user.type(time, "950{Enter}");
    expect(time).toHaveAccessibleDescription(/Three digits alone are not clear/);
    expect(time).toHaveValue("950");
    await expect.poll(() => document.activeElement).toBe(time);
    await user.clear(form.getByLabelText("By"));
    expect(form.getByLabelText("By")).toHaveAccessibleDescription(/No whole date is chosen/);
  });

  it("questions a silly target once and stores it at the second press", async () => {
    const { user } = await renderAt("#/targets", targets, threeSessions);
    const form = await openForm(user);
    await user.type(form.getByLabelText("Time to reach"), "1:20.000{Enter}");
    expect(await form.findAllByText(/3\.20 s faster than your PB/)).not.toHaveLength(0);
    expect(screen.queryByRole("heading", { level: 3 })).not.toBeInTheDocument();
    await user.click(form.getByRole("button", { name: "Set it all the same" }));
    expect(await screen.findByRole("heading", { level: 3, name: "best lap 1:20.000" })).toBeVisible();
  });

  it("asks whether a second one is meant where the same is wanted already, and of no target about itself", async () => {
    const { user } = await renderAt("#/targets", targets, withTarget({}));
    const form = await openForm(user);
    await user.type(form.getByLabelText("Time to reach"), "1:23.000{Enter}");
    expect(
      await form.findAllByText(/is a target of yours already: is a second one meant\?$/),
    ).not.toHaveLength(0);
    await user.click(form.getByRole("button", { name: "Cancel" }));
    await user.click(await screen.findByRole("button", { name: /^Edit: Best lap 1:23\.000/ }));
    const change = within(screen.getByRole("form", { name: "Change the target" }));
    await user.clear(change.getByLabelText("By"));
    await user.type(change.getByLabelText("By"), "2026-12-12");
    const store = change.getByRole("button", { name: "Store changes" });
    await waitFor(() => expect(store).toBeEnabled());
    await user.click(store);
    expect(await screen.findByText("by Sat 12 Dec 2026")).toBeVisible();
  });

  it("asks anew when the answer to a question is another silly target", async () => {
    const { user } = await renderAt("#/targets", targets, threeSessions);
    const form = await openForm(user);
    const time = form.getByLabelText("Time to reach");
    await user.type(time, "1:20.000{Enter}");
    await user.clear(time);
    await user.type(time, "1:25.000{Enter}");
    expect(await form.findAllByText(/is 1:23\.200 already/)).not.toHaveLength(0);
    expect(screen.queryByRole("heading", { level: 3 })).not.toBeInTheDocument();
  });

  it("what is typed survives a reload, and Cancel really forgets it", async () => {
    const { user, reload } = await renderAt("#/targets", targets, threeSessions);
    const form = await openForm(user);
    await user.type(form.getByLabelText("Time to reach"), "1:22");
    reload();
    expect(await screen.findByLabelText("Time to reach")).toHaveValue("1:22");
    await user.click(screen.getByRole("button", { name: "Cancel" }));
    reload();
    expect(await screen.findByRole("button", { name: "Set a target" })).toBeVisible();
    expect(screen.queryByLabelText("Time to reach")).not.toBeInTheDocument();
  });
});

describe("following a target", () => {
  it("shows how far it has come since it was set", async () => {
    await renderAt("#/targets", targets, withTarget({}));
    expect(await screen.findByRole("progressbar")).toHaveAttribute(
      "aria-valuetext",
      "80 % of the way, 0.200 s to go",
    );
    expect(screen.getByText("10 days left.")).toBeVisible();
  });

  it("says on which day it was reached", async () => {
    await renderAt("#/targets", targets, withTarget({ value: 83_500 }));
    expect(await screen.findByText("Reached on Wed 11 Nov 2026.")).toBeVisible();
  });

  it("a time known to tenths reaches nothing that it might have missed", async () => {
    await renderAt("#/targets", targets, async (book) => {
      const { comboId } = await addCombo(book, hatch);
      const setOn = "2026-11-05";
      await addSessions(book, comboId, [{ date: "2026-11-18", laps: [83_200], decimals: 1 }]);
      const target = { comboId, kind: "best", by: "2026-12-05", setOn, setAt: at(setOn) } as const;
      await setTarget(book, { ...target, value: 83_250 });
      await setTarget(book, { ...target, value: 83_299 });
    });
    // From 1:23.200 to 1:23.299: the lap may have been either.
    expect(await screen.findByText("10 days left.")).toBeVisible();
    expect(screen.getByText("Reached on Wed 18 Nov 2026.")).toBeVisible();
    await waitFor(() => expect(screen.getAllByText(/about 1:23\.2 now/)).toHaveLength(2));
  });

  it("measures a usual lap by the level, which one good evening does not carry", async () => {
    await renderAt("#/targets", targets, async (book) => {
      await withTarget({ kind: "median", value: 83_450, start: 84_200 })(book);
      const [comboId = ""] = await book.tables.combos.toCollection().primaryKeys();
      const [setOn, by] = ["2026-11-05", "2026-12-05"];
      const setAt = at(setOn);
      await setTarget(book, { comboId, kind: "median", value: 84_500, by, setOn, setAt, start: 84_800 });
    });
    // The median of the last evening, 1:23.400, lies under the first of them; the level not very likely.
    expect(await screen.findByText("10 days left.")).toBeVisible();
    expect(screen.getByText(/^Reached on .* Nov 2026\.$/)).toBeVisible();
  });

  it("says plainly that it was missed, and how close it came", async () => {
    await renderAt("#/targets", targets, withTarget({ by: "2026-11-15" }));
    expect(await screen.findByText("Missed. Your best lap in that time: 1:23.400.")).toBeVisible();
  });

  it("says how close an evening came that was no PB", async () => {
    await renderAt("#/targets", targets, async (book) => {
      const comboId = await threeSessions(book);
      await addSessions(book, comboId, [
        { date: "2026-11-20", laps: [83_900, 83_456, 83_700] },
        { date: "2026-11-22", laps: [83_800] },
      ]);
      const [setOn, by] = ["2026-11-19", "2026-11-21"];
      await setTarget(book, { comboId, kind: "best", value: 83_000, by, setOn, setAt: at(setOn) });
    });
    expect(await screen.findByText("Missed. Your best lap in that time: 1:23.456.")).toBeVisible();
  });

  it("says where nothing in that time was faster than what it was set at", async () => {
    await renderAt("#/targets", targets, withTarget({ by: "2026-11-15", start: 83_300 }));
    expect(
      await screen.findByText(
        "Missed. Your best lap in that time: 1:23.400, not faster than the 1:23.300 it was set at.",
      ),
    ).toBeVisible();
  });

  it("tells no best of a missed target where nothing was driven in that time", async () => {
    await renderAt("#/targets", targets, withTarget({ by: "2026-11-10" }));
    expect(await screen.findByText("Missed.")).toBeVisible();
  });

  it("a target of an older page is measured by nothing", async () => {
    await renderAt("#/targets", targets, async (book) => {
      await withTarget({})(book);
      const combos = await book.tables.combos.toArray();
      await turnPage(book, {
        comboIds: combos.map(({ id }) => id),
        from: at("2026-11-15"),
        reason: "physics",
      });
    });
    expect(await screen.findByText("Set before the change; no longer comparable.")).toBeVisible();
    expect(screen.queryByRole("progressbar")).not.toBeInTheDocument();
  });
});

describe("changing a target", () => {
  it("shows one form at a time, and loses nothing that was typed in the one that waits", async () => {
    const { user } = await renderAt("#/targets", targets, withTarget({}));
    await screen.findByRole("heading", { level: 3 });
    const form = await openForm(user);
    expect(form.getByText(/Type it like 1:23\.000, or its last digits/)).toBeVisible();
    await user.type(form.getByLabelText("Time to reach"), "1:22.8");
    await user.click(screen.getByRole("button", { name: /^Edit: Best lap 1:23\.000/ }));
    expect(screen.getAllByRole("form").map((one) => one.getAttribute("aria-label"))).toEqual([
      "Change the target",
    ]);
    await user.click(screen.getByRole("button", { name: "Set a target" }));
    expect(screen.getAllByRole("form")).toHaveLength(1);
    expect(screen.getByLabelText("Time to reach")).toHaveValue("1:22.8");
  });

  it("an edit keeps the day it was set and the figure it started from", async () => {
    const { user } = await renderAt("#/targets", targets, withTarget({}));
    await user.click(await screen.findByRole("button", { name: /^Edit: Best lap 1:23\.000/ }));
    const time = screen.getByLabelText("Time to reach");
    await user.clear(time);
    await user.type(time, "1:23.100");
    const store = await screen.findByRole("button", { name: "Store changes" });
    await waitFor(() => expect(store).toBeEnabled());
    await user.click(store);
    expect(await screen.findByRole("heading", { level: 3, name: "best lap 1:23.100" })).toBeVisible();
    await unfold(user);
    expect(screen.getByText(/^1:24\.000 on Thu 5 Nov 2026, when it was set/)).toBeVisible();
  });

  it("a missed one is set anew in one press: the same time, as many days ahead, and the old one in the archive", async () => {
    const { user } = await renderAt(
      "#/targets",
      targets,
      withTarget({ by: "2026-11-15", process: "brake later" }),
    );
    await user.click(await screen.findByRole("button", { name: "Same time, new date: Sat 5 Dec 2026" }));
    await screen.findByText("by Sat 5 Dec 2026");
    await waitFor(() =>
      expect(screen.getByRole("heading", { level: 3, name: "best lap 1:23.000" })).toHaveFocus(),
    );
    expect(screen.getByText("brake later")).toBeVisible();
    expect(await screen.findByText("10 days left.")).toBeVisible();
    await user.click(screen.getByRole("button", { name: /^Archive\s*1 target/ }));
    expect(await screen.findByText("by Sun 15 Nov 2026")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Undo" }));
    expect(await screen.findByRole("button", { name: "Same time, new date: Sat 5 Dec 2026" })).toBeVisible();
    expect(screen.queryByText("by Sat 5 Dec 2026")).not.toBeInTheDocument();
  });

  it("is offered no new date while it is open", async () => {
    await renderAt("#/targets", targets, withTarget({}));
    expect(await screen.findByText("10 days left.")).toBeVisible();
    expect(screen.queryByRole("button", { name: /new date/ })).not.toBeInTheDocument();
  });

  it("goes into the archive and comes out of it", async () => {
    const { user } = await renderAt("#/targets", targets, withTarget({}));
    await user.click(await screen.findByRole("button", { name: /^Archive: Best lap/ }));
    await user.click(await screen.findByRole("button", { name: /^Archive\s*1 target/ }));
    await user.click(screen.getByRole("button", { name: /^Take out of the archive: Best lap/ }));
    expect(await screen.findByRole("button", { name: /^Archive: Best lap/ })).toBeVisible();
  });

  it("a deleted target comes back by Undo", async () => {
    const { user } = await renderAt("#/targets", targets, withTarget({}));
    await user.click(await screen.findByRole("button", { name: /^Delete: Best lap/ }));
    expect(await screen.findByText("Target deleted.", { selector: "p" })).toBeVisible();
    await waitFor(() => expect(screen.queryByRole("heading", { level: 3 })).not.toBeInTheDocument());
    await user.click(screen.getByRole("button", { name: "Undo" }));
    expect(await screen.findByRole("heading", { level: 3, name: "best lap 1:23.000" })).toBeVisible();
  });
});

describe("the focus", () => {
  it("goes into the form and comes back to its button", async () => {
    const { user } = await renderAt("#/targets", targets, threeSessions);
    await openForm(user);
    expect(screen.getByLabelText("Combo")).toHaveFocus();
    await user.click(screen.getByRole("button", { name: "Cancel" }));
    await waitFor(async () =>
      expect(await screen.findByRole("button", { name: "Set a target" })).toHaveFocus(),
    );
  });

  it("stays on the page when a target is deleted", async () => {
    const { user } = await renderAt("#/targets", targets, withTarget({}));
    await user.click(await screen.findByRole("button", { name: /^Delete: Best lap/ }));
    await screen.findByText("Target deleted.", { selector: "p" });
    await waitFor(() => expect(screen.getByRole("heading", { level: 1, name: "Targets" })).toHaveFocus());
  });
});

describe("a target that was there when it was set", () => {
  it("and is not there now has no bar of a way", async () => {
    await renderAt("#/targets", targets, withTarget({ kind: "median", value: 83_000, start: 82_900 }));
    expect(await screen.findByText(/to go, though it was reached when it was set/)).toBeVisible();
    expect(screen.queryByRole("progressbar")).not.toBeInTheDocument();
  });
});

describe("a combo without a target", () => {
  it("has its plan and its races all the same", async () => {
    await renderAt("#/targets", targets, async (book) => {
      await withTarget({})(book);
      const other = await addCombo(book, { car: { name: "kart" }, track: { name: "Tessemoor" } });
      await addSessions(book, other.comboId, [{ date: "2026-11-10", laps: [60_000] }]);
    });
    const part = within(await screen.findByRole("region", { name: "Without a target" }));
    expect(part.getAllByRole("listitem")).toHaveLength(1);
    expect(part.getByText("Tessemoor · kart")).toBeVisible();
    expect(part.getByRole("link", { name: "Plan" })).toHaveAttribute(
      "href",
      expect.stringMatching(/part=plan$/),
    );
    expect(part.getByRole("link", { name: "Race distance" })).toHaveAttribute(
      "href",
      expect.stringMatching(/part=race$/),
    );
  });
});
