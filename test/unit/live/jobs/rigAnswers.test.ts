import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addRig, deleteRig, mergeInto } from "#db";
import { askHere } from "#live";
import { rigAnswerShift, sayRigEvidence } from "#words";
import { aLogbook } from "../../../support/aLogbook.ts";
import { rows, truth } from "../../demo-data/theDemo.ts";

const today = "2026-11-25";

async function theDemoOpened() {
  const { book } = await aLogbook(Date.UTC(2026, 10, 25));
  await mergeInto(book, rows, "the demo");
  return book;
}

test("the demo's two changes are answered, the newest first: the lower gain by its test, the view by the weeks around it", async () => {
  const book = await theDemoOpened();
  const [view, gain, ...more] = await askHere(book, "rigAnswers", { today });
  expect(more).toEqual([]);
  expect(view?.rig.id).toBe(truth.settings.view.rigAfter);
  expect(view?.tests).toEqual([]);
  expect(gain?.rig.id).toBe(truth.settings.gain.rigAfter);
  expect(gain?.comboId).toBe(truth.combos.moorHatch.comboId);
  expect(gain?.elsewhere).toEqual([]);
  const shift = gain && rigAnswerShift(gain);
  expect(shift?.low).toBeLessThan(truth.settings.gain.effectMs.moorHatch);
  expect(shift?.high).toBeGreaterThan(truth.settings.gain.effectMs.moorHatch);
  expect(gain && sayRigEvidence(gain)).toBe("tested in pairs of runs");
  book.close();
});

test("asked about one combo, only what it was driven with answers; what was never driven about is left out", async () => {
  const book = await theDemoOpened();
  const { comboId } = truth.combos.ringHatch;
  const [, gain] = await askHere(book, "rigAnswers", { today, comboId });
  expect(gain?.comboId).toBe(comboId);
  expect(gain?.tests).toEqual([]);
  expect(gain?.elsewhere.map((test) => test.comboId)).toEqual([truth.combos.moorHatch.comboId]);
  expect(await askHere(book, "rigAnswers", { today, comboId: book.newId() })).toEqual([]);
  const part = { screen: {}, view: {}, wheel: {}, pedals: {}, seat: {} };
  const { id } = await addRig(book, { ...part, from: "2026-11-24", name: "stiffer", note: "" });
  const answers = await askHere(book, "rigAnswers", { today });
  expect(answers.map(({ rig }) => rig.id)).not.toContain(id);
  book.close();
});

test("a test does not answer for a change it did not try: another value came in force before its B was kept", async () => {
  const book = await theDemoOpened();
  const kept = rows.rigs.find(({ id }) => id === truth.settings.gain.rigAfter);
  const before = rows.rigs.find(({ id }) => id === truth.settings.gain.rigBefore);
  if (kept === undefined || before === undefined) throw new Error("The demo has both records.");
  const { screen, view, wheel, pedals, seat } = before;
  const own = { screen, view, wheel, pedals, seat, from: kept.from, note: "" };
  const gainOf = async () =>
    (await askHere(book, "rigAnswers", { today })).find(({ rig }) => rig.id === kept.id);
  // The clock of the test stands long after the demo's: of one day's records it would be the later.
  const day = (days: number) =>
    new Date(Date.parse(kept.from) + days * 86_400_000).toISOString().slice(0, 10);
  const { id } = await addRig(book, {
    ...own,
    from: day(-1),
    name: "tried",
    wheel: { ...wheel, gainPercent: 61 },
  });
  expect((await gainOf())?.tests ?? []).toEqual([]);
  await deleteRig(book, id);
  await addRig(book, { ...own, from: day(-1), name: "same gain", seat: { ...seat, note: "one notch up" } });
  expect((await gainOf())?.tests).toHaveLength(1);
  book.close();
});
