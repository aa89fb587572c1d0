import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import {
  addCombo,
  addLaps,
  addRig,
  addRigTest,
  beginTestRun,
  endSession,
  type Logbook,
  rigs,
  rigTests,
  startSession,
  voidTestRun,
} from "#db";
import { useRows } from "#live";
import { useUndo } from "#state/undo.ts";
import { RigScreen } from "../../../../../src/screens/rig/RigScreen.tsx";
import { aGainTest } from "../../../../support/aGainTest.ts";
import { aLap } from "../../../../support/aLap.ts";
import { renderAt } from "../../../../support/renderAt.tsx";

const combo = { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } };
const order = ["A", "B", "B", "A", "A", "B"] as const;
let kept: { readonly names: readonly string[]; readonly tests: Awaited<ReturnType<typeof rigTests>> };

/** The screen, and the rows behind it as they are in the logbook. */
function Peek() {
  kept = useRows(
    async (book) => ({ names: (await rigs(book)).map(({ name }) => name), tests: await rigTests(book) }),
    [],
  ) ?? { names: [], tests: [] };
  return <RigScreen />;
}

/** A test of the gain with so many pairs driven: B is three tenths faster, more or less. */
async function aTest(
  book: Logbook,
  pairs: number,
): Promise<{ readonly comboId: string; readonly testId: string }> {
  const { comboId } = await addCombo(book, combo);
  const rig = { name: "", screen: {}, view: {}, pedals: {}, seat: {}, note: "" };
  await addRig(book, { ...rig, from: "2026-11-03", wheel: { gainPercent: 72 } });
  const { id: testId } = await addRigTest(
    book,
    aGainTest(comboId, order, {
      field: "wheel.gainPercent",
      valueA: 72,
      valueB: 54,
      smallestMs: 100,
      lapsARun: 5,
    }),
  );
  const { sessionId } = await startSession(book, { comboId, date: "2026-11-25", zone: "UTC" });
  for (const [index, first] of order.slice(0, pairs).entries())
    for (const side of [first, first === "A" ? "B" : "A"] as const) {
      const { runId } = await beginTestRun(book, { sessionId, testId, pair: index + 1, side });
      const usual = side === "A" ? 84_400 + index * 20 : 84_100 + index * index;
      const laps = [-90, 60, 0, 110, -40].map((off) => ({ id: book.newId(), lap: aLap(usual + off) }));
      await addLaps(book, { runId, laps });
      if (index === 0 && side === first && pairs < 6)
        await voidTestRun(book, { runId, reason: "interrupted" });
    }
  await endSession(book, { sessionId });
  window.location.hash = `#/rig?test=${testId}`;
  return { comboId, testId };
}

const usual = [84_310, 84_460, 84_400, 84_510, 84_360];

/** The same after two pairs, and half a pair in a session of its own. */
async function halfAPair(book: Logbook, isEnded: boolean): Promise<void> {
  const { comboId, testId } = await aTest(book, 2);
  const { sessionId } = await startSession(book, { comboId, date: "2026-11-26", zone: "UTC" });
  const { runId } = await beginTestRun(book, { sessionId, testId, pair: 3, side: "B" });
  await addLaps(book, { runId, laps: usual.map((ms) => ({ id: book.newId(), lap: aLap(ms) })) });
  if (isEnded) await endSession(book, { sessionId });
}

const comparing = /faster|slower|steadier|difference of/i;

describe("a test that lasts", () => {
  it("tells how far it is and which runs count, and nothing of how its settings compare", async () => {
    await renderAt("", <RigScreen />, (book) => aTest(book, 3));
    expect(await screen.findByRole("heading", { name: "Less gain?" })).toBeVisible();
    expect(screen.getByText("2 of 6 pairs driven")).toBeVisible();
    const pairs = within(screen.getByRole("list", { name: "Pairs of runs" })).getAllByRole("listitem");
    expect(pairs).toHaveLength(6);
    expect(pairs[0]).toHaveTextContent("Pair 1: A next, B to come");
    expect(pairs[1]).toHaveTextContent("Pair 2: B driven, A driven");
    expect(screen.getByText("Next: A, gain 72 %, for pair 1 of 6 of the rig test.")).toBeVisible();
    const runs = within(screen.getByRole("table", { name: "Runs of the test" }));
    expect(runs.getByRole("row", { name: /void: interrupted/ })).toHaveTextContent("no");
    expect(runs.getByRole("row", { name: /driven before the run its pair begins with/ })).toBeVisible();
    expect(document.body.textContent).not.toMatch(comparing);
  });

  it("asks for the other half of a pair while its session lasts", async () => {
    await renderAt("", <RigScreen />, (book) => halfAPair(book, false));
    expect(await screen.findByText(/^Next: A, gain 72 %, for pair 3 of 6/)).toBeVisible();
    expect(screen.getByText(/^Log says which setting is next/)).toBeVisible();
  });

  it("begins a half pair of an evening that is over anew, as Log does", async () => {
    await renderAt("", <RigScreen />, (book) => halfAPair(book, true));
    expect(await screen.findByText(/^Next: A, gain 72 %, for pair 1 of 6/)).toBeVisible();
    expect(screen.getByRole("row", { name: /not driven that evening/ })).toBeVisible();
    expect(screen.getByText(/^Start a session with Varnholt Ring · club hatch there/)).toBeVisible();
  });

  it("counts a void run again, and has another void for a reason in the driver's own words", async () => {
    const { user } = await renderAt("", <RigScreen />, (book) => aTest(book, 3));
    await user.click(await screen.findByRole("button", { name: "Count run 1 again" }));
    expect(await screen.findByText("3 of 6 pairs driven")).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Run 2 is void" }));
    await user.type(screen.getByRole("textbox", { name: "In other words" }), "a cat on the pedals");
    await user.click(screen.getByRole("button", { name: "Void the run" }));
    expect(await screen.findByText(/void: a cat on the pedals/)).toBeVisible();
  });

  it("says that its A is not in force, where another value is stored while it lasts, in the form and here", async () => {
    const { user } = await renderAt("", <RigScreen />, (book) => aTest(book, 3));
    await screen.findByText("2 of 6 pairs driven");
    expect(screen.queryByText(/The record in force is not A/)).not.toBeInTheDocument();
    const page = window.location.hash;
    window.location.hash = "#/rig?field=wheel.gainPercent";
    const gain = await screen.findByRole("textbox", { name: /gain/i });
    const underWay = /^A rig test of gain 72 % against gain 54 % is under way: put A back on/;
    expect(screen.queryByText(underWay)).not.toBeInTheDocument();
    await user.clear(gain);
    await user.type(gain, "60");
    expect(await screen.findByText(underWay)).toBeVisible();
    await user.click(screen.getByRole("button", { name: "Store" }));
    await waitFor(() => expect(screen.queryByRole("button", { name: "Store" })).not.toBeInTheDocument());
    window.location.hash = page;
    expect(
      await screen.findByText(
        "The record in force is not A: put gain 72 % on for the runs with A, or stop the test.",
      ),
    ).toBeVisible();
  });

  it("says what stopping does before it stops, and then gives an estimate and no verdict", async () => {
    const { user } = await renderAt("", <Peek />, (book) => aTest(book, 5));
    await user.click(await screen.findByRole("button", { name: "Stop the test early" }));
    expect(screen.getByText(/After 4 of 6 pairs .* no verdict/)).toBeVisible();
    expect(kept.tests[0]?.endedAt).toBeUndefined();
    await user.click(screen.getByRole("button", { name: "Stop it now" }));
    expect(await screen.findByText("Stopped after 4 of 6 pairs: an estimate, no claim.")).toBeVisible();
    expect(screen.getByText(/^B \(gain 54 %\) was 0\.\d\d s a lap faster in these pairs/)).toBeVisible();
    expect(screen.queryByRole("button", { name: "Undo" })).not.toBeInTheDocument();
    expect(useUndo.getState().done).toEqual([]);
  });
});

describe("a test that is over", () => {
  it("gives the verdict, the pairs as a chart with its table, and the check", async () => {
    const { user } = await renderAt("", <RigScreen />, (book) => aTest(book, 6));
    expect(
      await screen.findByText(/^B \(gain 54 %\) is 0\.\d\d s a lap faster; with 6 pairs the true difference/),
    ).toBeVisible();
    expect(screen.getByText("Varnholt Ring · club hatch")).toBeVisible();
    expect(screen.getByRole("figure", { name: /B was faster in 6 of 6 pairs/ })).toBeVisible();
    await user.click(screen.getByRole("button", { name: /^Table, files: / }));
    await user.click(await screen.findByRole("menuitem", { name: "Show as a table" }));
    const table = within(screen.getByRole("table", { name: /Gain 54 % is/ }));
    expect(table.getAllByRole("row")).toHaveLength(7);
    expect(screen.getByText(/exact signed-rank test.*It agrees\./)).toBeVisible();
  });

  it("begins a record with the setting that is kept, in one write that can be taken back", async () => {
    const { user } = await renderAt("", <Peek />, (book) => aTest(book, 6));
    await user.click(await screen.findByRole("button", { name: "Keep B, gain 54 %" }));
    expect(await screen.findByText("Its record")).toBeVisible();
    expect(kept.names).toEqual(["", "gain 54 %"]);
    expect(kept.tests[0]).toMatchObject({ kept: "B" });
    await user.click(screen.getByRole("button", { name: "Undo" }));
    await waitFor(() => expect(kept.names).toEqual([""]));
    expect(await screen.findByRole("button", { name: "Keep A, gain 72 %" })).toBeVisible();
  });

  it("lets the other setting be kept instead later on", async () => {
    const { user } = await renderAt("", <Peek />, (book) => aTest(book, 6));
    await user.click(await screen.findByRole("button", { name: "Keep B, gain 54 %" }));
    await user.click(await screen.findByRole("button", { name: "Keep A instead" }));
    await waitFor(() => expect(kept.tests[0]).toMatchObject({ kept: "A" }));
    expect(kept.names).toEqual(["", "gain 54 %", "gain 72 %"]);
    expect(await screen.findByRole("button", { name: "Keep B instead" })).toBeVisible();
  });

  it("begins no record where the setting in force is kept", async () => {
    const { user } = await renderAt("", <Peek />, (book) => aTest(book, 6));
    await user.click(await screen.findByRole("button", { name: "Keep A, gain 72 %" }));
    expect(await screen.findByText(/^Kept:/)).toBeVisible();
    expect(kept.names).toEqual([""]);
  });
});

describe("a test that is not there", () => {
  it("says so", async () => {
    await renderAt("#/rig?test=01a0aba9-6300-740c-9d6d-b6a32a451946", <RigScreen />, (book) =>
      addCombo(book, combo),
    );
    expect(await screen.findByText(/is not in the logbook/)).toBeVisible();
  });
});
