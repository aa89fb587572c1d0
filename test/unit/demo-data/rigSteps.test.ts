import { expect, test } from "vitest";
import { rigSteps } from "#stats";
import { comboKeys } from "../../../demo-data/combos.ts";
import { comboOf, rows, truth } from "./theDemo.ts";

const combos = comboKeys.map(comboOf);
const records = rows.rigs.map(({ id, from }) => ({ id, from }));
const stepsAt = (on: string) => {
  const rigId = records.find(({ from }) => from === on)?.id ?? "none";
  return rigSteps({ combos, rigId, records, today: truth.lastDay });
};

for (const change of ["gain", "view"] as const)
  test(`the step at the change of ${change} holds the effect that is true of each combo`, () => {
    const { from: on, effectMs } = truth.settings[change];
    const steps = stepsAt(on);
    const known = comboKeys.flatMap((key) => {
      const line = steps.find(({ comboId }) => comboId === truth.combos[key].comboId);
      return line?.step.known ? [{ key, ...line.step.value }] : [];
    });
    expect(known.length).toBeGreaterThan(0);
    for (const { key, low, high } of known) {
      expect(low, key).toBeLessThanOrEqual(effectMs[key]);
      expect(high, key).toBeGreaterThanOrEqual(effectMs[key]);
    }
  });

test("the step leaves out what practice brought at the same time", () => {
  const { from: on, effectMs } = truth.settings.gain;
  const steps = stepsAt(on);
  const line = steps.find(({ comboId }) => comboId === truth.combos.ringHatch.comboId);
  if (!line?.step.known || !line.before || !line.after) throw new Error("no step");
  const plain = line.after.usual.ms - line.before.usual.ms;
  expect(plain).toBeLessThan(2 * effectMs.ringHatch);
  expect(Math.abs(line.step.value.estimate - effectMs.ringHatch)).toBeLessThan(
    Math.abs(plain - effectMs.ringHatch),
  );
});

test("a combo that was driven on one side only is not listed", () => {
  for (const from of ["2026-08-01", "2026-12-01"]) {
    const other = { id: "other", from };
    const all = [...records, other].sort((a, b) => (a.from < b.from ? -1 : 1));
    expect(rigSteps({ combos, rigId: other.id, records: all, today: truth.lastDay })).toEqual([]);
  }
});
