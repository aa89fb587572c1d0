import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addRig, mergeInto } from "#db";
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
