import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import {
  addCombo,
  addLaps,
  addRigTest,
  editPlan,
  type Logbook,
  plansOfCombo,
  sessionsOfCombo,
  setCount,
  startSession,
  waitingPlan,
} from "#db";
import type { Id, Plan, PlannedRun } from "#domain";
import { useLogbook, useRows } from "#live";
import { useAddress } from "#state/address.ts";
import { useUndo } from "#state/undo.ts";
import { LogScreen } from "../../../../../src/screens/log/LogScreen.tsx";
import { TargetsScreen } from "../../../../../src/screens/targets/TargetsScreen.tsx";
import { addSessions } from "../../../../support/addSessions.ts";
import { aGainTest } from "../../../../support/aGainTest.ts";
import { aLap } from "../../../../support/aLap.ts";
import { pick } from "../../../../support/pick.ts";
import { renderAt } from "../../../../support/renderAt.tsx";

let comboId: Id = "";
let stored: Plan | undefined;
let book: Logbook;

function Peek() {
  ({ book } = useLogbook());
  stored = useRows(async (open) => (await waitingPlan(open, comboId)) ?? null, [comboId]) ?? undefined;
  return useAddress().place === "log" ? <LogScreen /> : <TargetsScreen />;
}

async function aDriver(open: Logbook): Promise<void> {
  ({ comboId } = await addCombo(open, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } }));
  window.location.hash = `#/targets/${comboId}?part=plan`;
}

/** Five evenings of twelve laps. */
async function aPractisedDriver(open: Logbook): Promise<void> {
  await aDriver(open);
  const laps = [
    84_300, 84_500, 84_400, 84_350, 84_600, 84_450, 84_300, 84_700, 84_550, 84_400, 84_420, 84_380,
  ];
  await addSessions(
    open,
    comboId,
    ["2026-11-04", "2026-11-08", "2026-11-12", "2026-11-17", "2026-11-22"].map((date) => ({ date, laps })),
  );
}

const start = (fill = aPractisedDriver) => renderAt("#/targets?part=plan", <Peek />, fill);
const rows = async () => {
  const part = await screen.findByRole("region", { name: "The whole session" });
  return within(part)
    .getAllByRole("heading", { level: 3 })
    .map(({ textContent }) => textContent);
};
const textbox = (name: string | RegExp) => screen.getByRole("textbox", { name });
const button = (name: string | RegExp) => screen.findByRole("button", { name });

describe("a draft", () => {
  it("of a circuit never driven is for learning the way, and says why", async () => {
    await start(aDriver);
    expect(await rows()).toEqual(["Learn the way round", "Clean laps, no hurry", "First laps to measure"]);
    const first = screen.getByRole("region", { name: "What to do next" });
    expect(within(first).getByText("You have not driven here before.")).toBeVisible();
    expect(screen.getByText("3 runs, 22 laps")).toBeVisible();
    expect(stored).toBeUndefined();
  });

  it("names one thing to do next with its reason, and what it rests on one press away", async () => {
    const { user } = await start();
    const first = within(await screen.findByRole("region", { name: "What to do next" }));
    const [name] = first.getAllByRole("heading", { level: 3 });
    expect(await rows()).toContain(name?.textContent);
    const why = first.getByRole("button", { name: /^What this rests on/ });
    expect(why).toHaveAttribute("aria-expanded", "false");
    await user.click(why);
    const [reason, advice] = first.getAllByRole("term").slice(-2);
    expect(reason).toHaveTextContent(/^The reason: (?:measured on you|fair evidence), /);
    expect(advice).toHaveTextContent(/^The advice: /);
    expect(advice).toBeVisible();
  });

  it("is stored with the first change, which can be taken back", async () => {
    const { user } = await start();
    const before = await rows();
    await user.click(await button("Down: Warm up"));
    await waitFor(async () => expect(await rows()).toEqual([before[1], before[0], ...before.slice(2)]));
    expect(await screen.findAllByText(`Run moved to place 2 of ${before.length}.`)).not.toHaveLength(0);
    await waitFor(() => expect(screen.getByRole("button", { name: "Down: Warm up" })).toHaveFocus());
    await user.click(await button("Undo"));
    await waitFor(async () => expect(await rows()).toEqual(before));
    await waitFor(() => expect(stored).toBeUndefined());
    expect(screen.queryByRole("button", { name: "Draft it anew" })).not.toBeInTheDocument();
  });
});

describe("a session that is open", () => {
  const begin = (plan?: readonly PlannedRun[]) => async (open: Logbook) => {
    await aDriver(open);
    await startSession(open, { comboId, date: "2026-11-25", zone: "Europe/Berlin", ...(plan && { plan }) });
  };
  const takeIt = "Take it into the open session";

  it("without a plan has the way to it in Log, and takes it along", async () => {
    const { user } = await start(begin());
    await user.click(await screen.findByRole("link", { name: "Go on in Log" }));
    await user.click(await screen.findByRole("link", { name: "Plan this session" }));
    expect(await screen.findByRole("heading", { level: 1, name: /^Plan: Varnholt Ring/ })).toBeVisible();
    expect(await screen.findByText(/^A session is open without a plan/)).toBeVisible();
    expect(screen.queryByRole("link", { name: "Start a session in Log" })).toBeNull();
    await user.click(await button(takeIt));
    expect(await screen.findByText(/^Plan 1 of 3: Learn the way round/)).toBeVisible();
    expect(screen.queryByRole("link", { name: "Plan this session" })).toBeNull();
    await useUndo.getState().undo();
    expect(await screen.findByRole("link", { name: "Plan this session" })).toBeVisible();
  });

  it("takes a draft along under ids of its own, so that the next plan made of that draft waits", async () => {
    const { user } = await start(begin());
    await user.click(await button(takeIt));
    await screen.findByText(/^Plan 1 of 3/);
    window.location.hash = `#/targets/${comboId}?part=plan`;
    expect(await screen.findByText(/^A session is open with a plan of its own/)).toBeVisible();
    await user.click(await button("Down: Learn the way round"));
    await waitFor(() => expect(stored?.lines).toHaveLength(3));
    const [session] = await sessionsOfCombo(book, comboId);
    const ids = session?.plan?.map(({ id }) => id) ?? [];
    expect(stored?.lines.filter(({ id }) => ids.includes(id))).toEqual([]);
  });

  it("takes the driver's own plan along as it is, which then waits no longer", async () => {
    const { user } = await start(begin());
    await user.click(await button("Down: Learn the way round"));
    await waitFor(() => expect(stored).toBeDefined());
    const own = stored?.lines;
    await user.click(await button(takeIt));
    await waitFor(() => expect(stored).toBeUndefined());
    const [session] = await sessionsOfCombo(book, comboId);
    expect(session?.plan).toEqual(own);
  });

  it("with a plan of its own keeps it", async () => {
    await start(begin([{ id: "01234567-89ab-7cde-8f01-0000000000c1", purpose: "Warm up" }]));
    expect(await screen.findByText(/^A session is open with a plan of its own/)).toBeVisible();
    expect(screen.queryByRole("button", { name: takeIt })).toBeNull();
    expect(screen.getByRole("link", { name: "Go on in Log" })).toBeVisible();
  });

  it("of another combo is not told of here", async () => {
    await start(async (open) => {
      await begin()(open);
      ({ comboId } = await addCombo(open, { car: { name: "GT" }, track: { name: "Varnholt Ring" } }));
      window.location.hash = `#/targets/${comboId}?part=plan`;
    });
    expect(await screen.findByRole("region", { name: "The whole session" })).toBeVisible();
    expect(screen.getByRole("link", { name: "Start a session in Log" })).toBeVisible();
    expect(screen.queryByRole("region", { name: "Open session" })).toBeNull();
  });
});

it("another combo is chosen, and the list of them folds", async () => {
  const { user } = await start(async (open) => {
    await addCombo(open, { car: { name: "GT" }, track: { name: "Aldmoor" } });
    await aDriver(open);
  });
  await user.click(await button("Another combo"));
  await user.click(await screen.findByRole("link", { name: /Aldmoor/ }));
  expect(await screen.findByRole("heading", { level: 1, name: /^Plan: Aldmoor/ })).toBeVisible();
  expect(await button("Another combo")).toHaveAttribute("aria-expanded", "false");
});

it("the last run taken out brings the draft back, and says so", async () => {
  const { user } = await start(aDriver);
  const drafted = await rows();
  for (const name of drafted) {
    await user.click(await button(`Take out: ${name}`));
    await screen.findAllByText(
      name === drafted.at(-1) ? "The last run is out: the draft stands again." : "Run taken out of the plan.",
    );
    if (name !== drafted.at(-1))
      await waitFor(() => expect(screen.queryByRole("button", { name: `Take out: ${name}` })).toBeNull());
  }
  await waitFor(async () => expect(await rows()).toEqual(drafted));
});

it("says where it is laps, and not minutes, that keep a draft short", async () => {
  const { user } = await start();
  await user.type(await screen.findByRole("textbox", { name: "Minutes you have" }), "12{Enter}");
  expect(await screen.findByText(/The draft is fitted to the minutes\.$/)).toBeVisible();
  await user.clear(textbox("Minutes you have"));
  await user.type(textbox("Minutes you have"), "120{Enter}");
  expect(
    await screen.findByText(/with no more than half as many laps again as your usual evening\.$/),
  ).toBeVisible();
});

describe("a run of the plan", () => {
  it("is changed in each of its fields, and is then the driver's own", async () => {
    const { user } = await start();
    await user.click(await button("Edit: Warm up"));
    await waitFor(() => expect(textbox("What it is for")).toHaveFocus());
    await user.clear(textbox("What it is for"));
    await user.type(textbox("What it is for"), "Slow laps");
    await user.clear(textbox("Laps"));
    await user.type(textbox("Laps"), "4");
    await user.click(screen.getByRole("radio", { name: "brisk" }));
    await user.type(textbox("Corner, if any"), "5");
    await user.clear(textbox("One thing to attend to"));
    await user.type(textbox("One thing to attend to"), "the kerb at the exit");
    pick(screen.getByRole("combobox", { name: "Good when" }), "mistakes at the corner, at most");
    await user.type(textbox("Mistakes"), "1{Enter}");
    await waitFor(() => expect(stored?.lines[0]).toMatchObject({ purpose: "Slow laps" }));
    expect(stored?.lines[0]).toEqual({
      ...{ id: stored?.lines[0]?.id, purpose: "Slow laps", kind: "warm-up", laps: 4, effort: "brisk" },
      ...{ corner: 5, attendTo: "the kerb at the exit", goodWhen: "at most 1 mistake at corner 5" },
      check: { figure: "corner", value: 1 },
    });
    await waitFor(() => expect(screen.getByRole("button", { name: "Edit: Slow laps" })).toHaveFocus());
  });

  it("keeps its reason while it is about the same thing", async () => {
    const { user } = await start();
    await user.click(await button("Edit: Warm up"));
    await user.clear(textbox("Laps"));
    await user.type(textbox("Laps"), "4{Enter}");
    await waitFor(() => expect(stored?.lines[0]?.laps).toBe(4));
    expect(stored?.lines[0]).toMatchObject({ rule: "warm-up", goodWhen: "4 laps driven" });
    expect(stored?.lines[0]?.reason).toBeDefined();
  });

  it("half typed survives a reload, and another is not opened over it", async () => {
    const { user, reload } = await start();
    await user.click(await button("Edit: Warm up"));
    await user.type(textbox("What it is for"), " gently");
    reload();
    await waitFor(() => expect(textbox("What it is for")).toHaveValue("Warm up gently"));
    await user.click(await button("Add a run"));
    expect(await screen.findAllByText(/^Store this run or cancel it first/)).not.toHaveLength(0);
    expect(textbox("What it is for")).toHaveValue("Warm up gently");
    await user.click(await button("Store changes"));
    await waitFor(() => expect(stored?.lines[0]?.purpose).toBe("Warm up gently"));
    await waitFor(() => expect(screen.queryByRole("form", { name: /^Change/ })).not.toBeInTheDocument());
  });

  it("with something wrong in it is not stored, and says what would be right", async () => {
    const { user } = await start();
    await user.click(await button("Add a run"));
    await user.clear(textbox("Laps"));
    await user.type(textbox("Laps"), "6");
    await user.click(await button("Add it"));
    expect(textbox("What it is for")).toHaveAccessibleDescription(/Say in a few words what the run is for/);
    expect(textbox("Clean laps")).toHaveAccessibleDescription(/7 is out of range.*from 1 to 6/);
    expect(textbox("What it is for")).toHaveFocus();
    expect(stored).toBeUndefined();
  });

  it("may be a drill, whose kind, corner and tries are enough", async () => {
    const { user } = await start();
    await user.click(await button("Add a drill"));
    pick(screen.getByRole("combobox", { name: "What is counted" }), "Exits without wheelspin");
    await user.type(textbox("Corner, if any"), "3");
    await user.click(await button("Add it"));
    await waitFor(() =>
      expect(stored?.lines.at(-1)).toMatchObject({
        ...{
          purpose: "Exits without wheelspin, corner 3",
          kind: "drill",
          drill: "traction",
          corner: 3,
          laps: 10,
        },
        ...{ check: { figure: "drill", value: 800 }, goodWhen: "8 of 10 exits without wheelspin" },
      }),
    );
  });

  it("is taken out, and with the last one the draft is there again", async () => {
    const { user } = await start(aDriver);
    const before = await rows();
    for (const purpose of before) {
      await user.click(await button(`Take out: ${purpose}`));
      if (purpose !== before.at(-1))
        await waitFor(() =>
          expect(screen.queryByRole("button", { name: `Take out: ${purpose}` })).not.toBeInTheDocument(),
        );
    }
    await waitFor(() => expect(stored).toBeUndefined());
    await waitFor(async () => expect(await rows()).toEqual(before));
  });
});

it("a run changed in another tab is not lost, and the driver is told", async () => {
  const { user } = await start();
  await user.click(await button("Down: Warm up"));
  await waitFor(() => expect(stored).toBeDefined());
  await user.click(await button("Edit: Warm up"));
  await user.type(textbox("What it is for"), " gently");
  const [plan] = await plansOfCombo(book, comboId);
  const lines = plan?.lines.map((line) => (line.purpose === "Warm up" ? { ...line, laps: 9 } : line)) ?? [];
  await editPlan(book, { id: plan?.id ?? "", patch: { lines } });
  await user.click(await button("Store changes"));
  expect(await screen.findAllByText(/it had been changed elsewhere meanwhile/)).not.toHaveLength(0);
});

it("minutes are said once, the draft is fitted to them, and a plan that takes longer says so", async () => {
  const { user } = await start();
  const minutes = await screen.findByRole("textbox", { name: "Minutes you have" });
  expect(minutes).toHaveAccessibleDescription(/^Your usual evening takes \d+ min\./);
  await user.type(minutes, "200{Enter}");
  expect(await screen.findByText(/18 laps, about/)).toBeVisible();
  await user.clear(minutes);
  await user.type(minutes, "12");
  await user.tab();
  await waitFor(() => expect(screen.queryByText(/18 laps, about/)).not.toBeInTheDocument());
  await user.click(await button(/^Down: /));
  await waitFor(() => expect(stored?.minutes).toBe(12));
});

const unfold = async (user: Awaited<ReturnType<typeof start>>["user"]) =>
  user.click(await button(/^Templates/));

describe("a template", () => {
  it("is kept under a name, taken in place of the plan, renamed and deleted", async () => {
    const { user, reload } = await start(aDriver);
    const drafted = await rows();
    await user.click(await button("Take out: First laps to measure"));
    await waitFor(() => expect(stored?.lines).toHaveLength(2));
    await unfold(user);
    await user.click(await button("Keep this plan as a template"));
    await waitFor(() => expect(textbox("Name of the template")).toHaveFocus());
    await user.type(textbox("Name of the template"), "First even");
    reload();
    await waitFor(() => expect(textbox("Name of the template")).toHaveValue("First even"));
    await user.type(textbox("Name of the template"), "ing{Enter}");
    expect(await screen.findByRole("heading", { name: "First evening" })).toBeVisible();
    expect(screen.getByText(/^2 runs, 14 laps: Learn the way round \(6 laps, warm-up, easy\)/)).toBeVisible();
    await waitFor(() =>
      expect(screen.getByRole("button", { name: "Keep this plan as a template" })).toHaveFocus(),
    );

    await user.click(await button("Draft it anew"));
    await waitFor(async () => expect(await rows()).toEqual(drafted));
    await user.click(await button("Take: First evening"));
    await waitFor(async () => expect(await rows()).toEqual(drafted.slice(0, 2)));
    expect(stored?.lines.map(({ reason }) => reason)).toEqual([undefined, undefined]);

    await user.click(await button("Rename: First evening"));
    await user.clear(textbox("Name of the template"));
    await user.click(await button("Store the name"));
    expect(textbox("Name of the template")).toHaveAccessibleDescription(/Type a name to find it by/);
    await user.type(textbox("Name of the template"), "Short evening{Enter}");
    await user.click(await button("Delete: Short evening"));
    await waitFor(() =>
      expect(screen.queryByRole("heading", { name: "Short evening" })).not.toBeInTheDocument(),
    );
    await user.click(await button("Undo"));
    expect(await screen.findByRole("heading", { name: "Short evening" })).toBeVisible();
  });
});

describe("what was", () => {
  async function drivenByAPlan(open: Logbook): Promise<void> {
    await aDriver(open);
    const plan: readonly PlannedRun[] = [
      {
        ...{
          id: open.newId(),
          purpose: "Stops at the mark, corner 5",
          kind: "drill",
          laps: 5,
          effort: "learning",
        },
        ...{ drill: "braking", corner: 5, goodWhen: "8 of 10 stops at the mark" },
        check: { figure: "drill", value: 800 },
      },
      { id: open.newId(), purpose: "A long run", laps: 12 },
    ];
    const { runId } = await startSession(open, {
      ...{ comboId, plan, date: "2026-11-22", startedAt: Date.parse("2026-11-22T18:00:00Z") },
      ...{ zone: "Europe/Berlin", endedAt: Date.parse("2026-11-22T19:00:00Z") },
    });
    const laps = [84_300, 84_500, 84_400, 84_350, 84_600].map((ms) => ({ id: open.newId(), lap: aLap(ms) }));
    await addLaps(open, { runId, laps });
    const count = { drill: "braking", corner: 5, good: 9, tries: 10 } as const;
    await setCount(open, { runId, ...count });
  }

  it("planned and driven last stands side by side, and so do the drills of the last weeks", async () => {
    await start(drivenByAPlan);
    const list = within(await screen.findByRole("list", { name: "Plan and outcome" }));
    const [drill, long] = list.getAllByRole("listitem");
    expect(drill).toHaveTextContent(
      /^Stops at the mark, corner 5 5 laps, drill, learning effortGood when 8 of 10 stops at the markGood 9 of 10 stops at the mark/,
    );
    expect(long).toHaveTextContent(/Not driven/);
    const drills = within(await screen.findByRole("region", { name: "Drills you counted" }));
    expect(drills.getByText(/^9 of 10 stops at the mark: 90 %, between \d+ and \d+ %$/)).toBeVisible();
    expect(drills.getByRole("link", { name: /^Corner 5: week by week/ })).toBeVisible();
  });
});

it("the next run of a rig test that waits can be added, once", async () => {
  const { user } = await start(async (open) => {
    await aPractisedDriver(open);
    await addRigTest(open, aGainTest(comboId, ["A", "B", "B", "A", "A", "B"]));
  });
  const first = await screen.findByRole("region", { name: "What to do next" });
  expect(within(first).getByRole("heading", { name: "The next run of the rig test" })).toBeVisible();
  expect(screen.queryByRole("button", { name: /^Add the next run/ })).not.toBeInTheDocument();
  expect(
    screen.queryByRole("button", { name: "Edit: The next run of the rig test" }),
  ).not.toBeInTheDocument();
  await user.click(await button("Take out: The next run of the rig test"));
  await user.click(await button("Add the next run of the rig test"));
  await waitFor(() => expect(stored?.lines.at(-1)?.rule).toBe("rig test"));
  await waitFor(() =>
    expect(screen.queryByRole("button", { name: /^Add the next run/ })).not.toBeInTheDocument(),
  );
});

it("an address of a combo that is not there leads to the others", async () => {
  await start(async (open) => {
    await aDriver(open);
    window.location.hash = "#/targets/01a05e0d-8720-73a0-9da3-7ef590588000?part=plan";
  });
  expect(await screen.findByRole("heading", { name: "This combo is not there" })).toBeVisible();
  expect(screen.getByRole("link", { name: "The plan for another combo" })).toBeVisible();
});
