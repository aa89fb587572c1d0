import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addPlan, deletePlan, editPlan, plansOfCombo, planTemplates } from "#db";
import type { PlannedRun } from "#domain";
import { anOpenSession } from "../../../support/aLogbook.ts";

const warmUp: PlannedRun = { purpose: "Warm up", laps: 3, kind: "warm-up", effort: "easy" };
const pace: PlannedRun = { purpose: "Pace", laps: 8 };

test("a plan is kept for its combo, the one changed last first, and a template for any, by name", async () => {
  const { book, comboId, clock } = await anOpenSession();
  const first = await addPlan(book, { comboId, minutes: 60, lines: [warmUp] });
  clock.pass(1000);
  const second = await addPlan(book, { comboId, lines: [pace] });
  for (const name of ["Short evening", "Before a race"]) await addPlan(book, { name, lines: [warmUp, pace] });
  const ids = async () => (await plansOfCombo(book, comboId)).map(({ id }) => id);
  expect(await ids()).toEqual([second.id, first.id]);
  clock.pass(1000);
  const [, expected] = await plansOfCombo(book, comboId);
  await editPlan(book, {
    id: first.id,
    patch: { lines: [warmUp, pace], minutes: undefined },
    ...(expected && { expected }),
  });
  expect(await ids()).toEqual([first.id, second.id]);
  expect((await plansOfCombo(book, comboId))[0]).not.toHaveProperty("minutes");
  expect((await planTemplates(book)).map(({ name }) => name)).toEqual(["Before a race", "Short evening"]);
});

test("what was done is said in its words, a template's too", async () => {
  const { book, comboId } = await anOpenSession();
  const plan = await addPlan(book, { comboId, lines: [] });
  const template = await addPlan(book, { name: "Short evening", lines: [] });
  const [kept] = await planTemplates(book);
  if (kept === undefined) throw new Error("no template");
  const said = [
    plan,
    await editPlan(book, { id: plan.id, patch: { lines: [pace] } }),
    await deletePlan(book, plan),
    template,
    await editPlan(book, { id: template.id, patch: { lines: [pace] }, expected: kept }),
    await deletePlan(book, kept),
  ].map(({ what }) => what);
  expect(said).toEqual([
    "Plan added",
    "Plan changed",
    "Plan deleted",
    "Template added",
    "Template changed",
    "Template deleted",
  ]);
});
