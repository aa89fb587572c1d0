import { expect, it } from "vitest";
import { targetProgress } from "#stats";

it("is the part of the way from the start, and what is left as it is shown", () => {
  expect(targetProgress(84_000, 84_250, 85_000)).toEqual({
    known: true,
    value: { progress: 0.75, left: 250 },
  });
  expect(targetProgress(900, 870.6, 800)).toEqual({
    known: true,
    value: { progress: expect.closeTo(0.706, 9), left: -29 },
  });
});

it("goes below the start and beyond the target", () => {
  expect(targetProgress(84_000, 85_500, 85_000)).toMatchObject({ value: { progress: -0.5, left: 1500 } });
  expect(targetProgress(84_000, 83_500, 85_000)).toMatchObject({ value: { progress: 1.5, left: -500 } });
});

it("says which figure is not known", () => {
  const because = (reason: string) => ({ known: false, reason: { because: reason } });
  expect(targetProgress(84_000, undefined, undefined)).toEqual(because("no figure yet"));
  expect(targetProgress(84_000, 84_250, undefined)).toEqual(because("no figure at the setting"));
  expect(targetProgress(84_000, 84_250, 84_000)).toEqual(because("reached at the setting"));
});

it("names what is no number", () => {
  expect(() => targetProgress(Number.NaN, undefined, undefined)).toThrow(/^target is NaN/);
  expect(() => targetProgress(84_000, Number.NaN, undefined)).toThrow(/^now is NaN/);
  expect(() => targetProgress(84_000, 84_250, Number.NaN)).toThrow(/^start is NaN/);
});
