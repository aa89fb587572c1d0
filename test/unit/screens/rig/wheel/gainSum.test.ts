import { expect, test } from "vitest";
import {
  forceSeen,
  type GainTexts,
  gainTextsFrom,
  offeredGain,
  readGainTexts,
  turnAtGain,
  workOutGain,
} from "../../../../../src/screens/rig/wheel/gainSum.ts";

const texts = (typed: Partial<GainTexts>): GainTexts => ({ ...gainTextsFrom(undefined), ...typed });
const worked = (typed: Partial<GainTexts>) => {
  const all = texts(typed);
  return workOutGain(all.way, readGainTexts(all).values);
};

test("a peak gives one gain with the reserve under the limit, by hand", () => {
  // 60 · 0.9 / 0.8
  expect(worked({ gain: "60", peak: "80" })).toEqual({ known: true, value: { low: 67.5, high: 67.5 } });
  expect(worked({ gain: "60", peak: "80", reserve: "20" })).toEqual({
    known: true,
    value: { low: 60, high: 60 },
  });
});

test("a share of time gives a range, typed in percent", () => {
  const found = worked({ way: "share", gain: "60", share: "10" });
  if (!found?.known) throw new Error("nothing found");
  // Half of 60 for the exponential tail; 0.63857 of it by R's qnorm for the half-normal one.
  expect(found.value.low).toBeCloseTo(30, 9);
  expect(found.value.high).toBeCloseTo(38.314, 3);
});

test("nothing is worked out while a figure is missing, and a reason stands where none can be", () => {
  expect(worked({ peak: "80" })).toBeUndefined();
  expect(worked({ gain: "60" })).toBeUndefined();
  expect(worked({ way: "share", gain: "60", share: "5", wanted: "" })).toBeUndefined();
  expect(worked({ gain: "60", peak: "100" })).toMatchObject({ reason: { because: "peak cut off" } });
  for (const share of ["0", "30", "45"])
    expect(worked({ way: "share", gain: "60", share })).toMatchObject({ reason: { measure: "share" } });
});

test("what the other way would ask is no problem", () => {
  expect(readGainTexts(texts({ gain: "60", peak: "80", share: "much" })).ok).toBe(true);
  expect(readGainTexts(texts({ way: "share", gain: "60", share: "much" }))).toMatchObject({
    ok: false,
    problems: { share: { wrong: "At the limit: “much” is not a number." } },
  });
});

test("the fields begin with what the record in force says", () => {
  const rig = { wheel: { gainPercent: 62, torque: 5.5, rimRadius: 0.15 } };
  expect(gainTextsFrom(rig as Parameters<typeof gainTextsFrom>[0])).toMatchObject({
    gain: "62",
    torque: "5.5",
    rimRadius: "15",
    reserve: "10",
    wanted: "1",
  });
});

test("the first step is offered in whole percent: down at once, up by five points", () => {
  expect(offeredGain(60, { low: 39.03, high: 45.65 })).toBe("45");
  expect(offeredGain(20, { low: 39.03, high: 45.65 })).toBe("25");
  expect(offeredGain(37, { low: 39.03, high: 45.65 })).toBe("39");
});

test("only a force that was seen whole, or whose share is known, is drawn", () => {
  expect(forceSeen("peak", { peak: 80, share: 5 })).toEqual({ peak: 80 });
  expect(forceSeen("peak", { peak: 100 })).toBeUndefined();
  expect(forceSeen("share", { peak: 80, share: 5 })).toEqual({ share: 0.05 });
  expect(forceSeen("share", { share: 30 })).toBeUndefined();
  expect(forceSeen("share", {})).toBeUndefined();
});

test("a share of time is drawn at another gain as the sum reckons with it, a peak as strong as it gets", () => {
  const over = ({ forces }: { readonly forces: readonly number[] }) =>
    forces.filter((force) => force > 100).length / forces.length;
  // 70 % with 4 % at the limit asks for 48 to 55 %: at 55 % one percent is still wanted there.
  const turn = turnAtGain({ share: 0.04 }, 70, 55);
  expect(over(turn)).toBeGreaterThan(0.008);
  expect(over(turn)).toBeLessThan(0.017);
  expect(turn.time?.low).toBeCloseTo(0.009, 3);
  expect(over(turnAtGain({ share: 0.04 }, 70, 70))).toBeCloseTo(0.04, 2);
  expect(Math.max(...turnAtGain({ peak: 80 }, 60, 30).forces)).toBeCloseTo(40, 9);
});
