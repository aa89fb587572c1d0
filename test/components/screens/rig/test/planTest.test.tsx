import { screen, waitFor, within } from "@testing-library/react";
import { describe, expect, it } from "vitest";
import { addCombo, addRig, type Logbook, rigTests } from "#db";
import type { RigTest } from "#domain";
import { useRows } from "#live";
import { RigScreen } from "../../../../../src/screens/rig/RigScreen.tsx";
import { addSessions } from "../../../../support/addSessions.ts";
import { pick } from "../../../../support/pick.ts";
import { renderAt } from "../../../../support/renderAt.tsx";

let stored: readonly RigTest[] = [];
/** The screen, and the tests behind it as they are in the logbook. */
function Peek() {
  stored = useRows((book) => rigTests(book), []) ?? [];
  return <RigScreen />;
}

async function aDriver(book: Logbook): Promise<void> {
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const rig = { name: "", screen: {}, pedals: {}, seat: {}, note: "" };
  await addRig(book, { ...rig, from: "2026-11-03", view: { degrees: 57 }, wheel: { gainPercent: 72 } });
  await addSessions(book, comboId, [
    { date: "2026-11-20", laps: [84_300, 84_500, 84_400, 84_350, 84_600] },
    { date: "2026-11-22", laps: [84_200, 84_450, 84_300, 84_250, 84_500] },
  ]);
}

const field = (name: string) => screen.getByRole("textbox", { name });
/** The form, once it is known what the driver's own runs say. */
async function start() {
  const rendered = await renderAt("#/rig?part=plan", <Peek />, aDriver);
  await screen.findByRole("heading", { name: "What it takes" });
  return rendered;
}
type User = Awaited<ReturnType<typeof start>>["user"];

/** Presses the button, once the driver's own runs and tests are read: until then nothing can be planned. */
async function plan(user: User): Promise<void> {
  const button = screen.getByRole("button", { name: "Plan the test" });
  await waitFor(() => expect(button).toBeEnabled());
  await user.click(button);
}

async function pickGain(): Promise<void> {
  pick(await screen.findByRole("combobox", { name: "Which value" }), "Gain: 72 %");
}

describe("a plan", () => {
  it("offers what is worth talking about, says what it takes, and asks its question by itself", async () => {
    const { user } = await start();
    await pickGain();
    await user.type(field("B, what is tried"), "54");
    await user.clear(field("Laps a run"));
    await user.type(field("Laps a run"), "3");
    expect(await screen.findByText(/3.? is out of range/)).toBeVisible();
    await user.clear(field("Laps a run"));
    await user.type(field("Laps a run"), "6");
    expect(screen.queryByText(/out of range/)).not.toBeInTheDocument();
    expect(screen.getByText("gain 72 %")).toBeVisible();
    expect(screen.getByText(/Wheel bases from about 8/)).toBeVisible();
    await waitFor(() => expect(field("Smallest difference that would matter")).not.toHaveValue(""));
    expect(field("The question")).toHaveValue(
      "Does gain 54 % instead of gain 72 % make me faster? Varnholt Ring · club hatch",
    );
    expect(screen.getByText(/^8 pairs of runs: 16 runs of 6 laps, about \d+ evenings$/)).toBeVisible();
    expect(screen.getByText(/cannot be told yet/)).toBeVisible();
  });

  it("is kept over a reload, and stored with an order drawn once, as many pairs either way round", async () => {
    const { user, reload } = await start();
    await pickGain();
    await user.type(field("B, what is tried"), "54");
    reload();
    await waitFor(() => expect(field("B, what is tried")).toHaveValue("54"));
    await screen.findByRole("heading", { name: "What it takes" });
    await user.clear(field("Smallest difference that would matter"));
    await user.type(field("Smallest difference that would matter"), "0.2");
    await plan(user);
    expect(await screen.findByText("0 of 8 pairs driven")).toBeVisible();
    expect(stored).toHaveLength(1);
    expect(stored[0]).toMatchObject({
      sayA: "gain 72 %",
      sayB: "gain 54 %",
      field: "wheel.gainPercent",
      valueA: 72,
      valueB: 54,
      figure: "usual",
      smallestMs: 200,
      lapsARun: 6,
      pairsPlanned: 8,
      level: 0.1,
    });
    expect(stored[0]?.pairs.filter(({ first }) => first === "A")).toHaveLength(4);
  });

  it("names what is wrong, keeps what was typed, and goes to the first field", async () => {
    const { user } = await start();
    await user.click(await screen.findByRole("button", { name: "Plan the test" }));
    expect(screen.getByText(/No value is chosen/)).toBeVisible();
    await pickGain();
    await user.type(field("B, what is tried"), "72");
    await plan(user);
    expect(field("B, what is tried")).toHaveAccessibleDescription(/B is the same as A/);
    expect(field("B, what is tried")).toHaveFocus();
    expect(stored).toEqual([]);
  });

  it("takes a setting in words, and may be judged by how far laps differ", async () => {
    const { user } = await start();
    await user.click(await screen.findByRole("radio", { name: "something else" }));
    await user.type(field("A"), "without gloves");
    await user.type(field("B"), "with gloves");
    await user.click(screen.getByRole("radio", { name: "how far laps differ" }));
    expect(field("The question")).toHaveValue(
      "With gloves or without gloves: which is steadier? Varnholt Ring · club hatch",
    );
    await user.clear(field("Smallest difference that would matter"));
    await user.type(field("Smallest difference that would matter"), "0.1");
    await plan(user);
    expect(await screen.findByText("0 of 8 pairs driven")).toBeVisible();
    expect(stored[0]).toMatchObject({ figure: "scatter", sayA: "without gloves" });
    expect(stored[0]).not.toHaveProperty("field");
  });

  it("waits while another test of the combo is not over", async () => {
    const { user } = await start();
    await pickGain();
    await user.type(field("B, what is tried"), "54");
    await user.clear(field("Smallest difference that would matter"));
    await user.type(field("Smallest difference that would matter"), "0.2");
    await plan(user);
    await screen.findByText("0 of 8 pairs driven");
    window.location.hash = "#/rig?part=plan";
    expect(await screen.findByText(/A rig test of this combo is not over yet:/)).toBeVisible();
    await plan(user);
    const form = within(screen.getByRole("form", { name: "Plan a rig test" }));
    expect(form.getByRole("combobox", { name: "Combo" })).toHaveAccessibleDescription(/stop it first/);
    expect(stored).toHaveLength(1);
  });
});
