import { expect, test } from "vitest";
import { firstGain, withinSlider } from "#physics";

test("a gain worked out stops at the usual end of a slider, unless the gain now lies past it", () => {
  // 70 · 0.9 / 0.3 = 210 and 500 · 0.9 / 0.95 = 473.7, by hand.
  expect(withinSlider(70, { low: 210, high: 210 })).toEqual({ low: 100, high: 100 });
  expect(withinSlider(70, { low: 89, high: 105 })).toEqual({ low: 89, high: 100 });
  expect(withinSlider(100, { low: 126, high: 126 })).toEqual({ low: 100, high: 100 });
  expect(withinSlider(500, { low: 473.7, high: 473.7 })).toEqual({ low: 473.7, high: 473.7 });
});

test("the first step goes down at once, and up by five points at most", () => {
  expect(firstGain(60, { low: 39, high: 45.6 })).toBe(45.6);
  expect(firstGain(500, { low: 473.7, high: 473.7 })).toBe(473.7);
  expect(firstGain(70, { low: 89, high: 100 })).toBe(75);
  expect(firstGain(70, { low: 72, high: 74 })).toBe(72);
  expect(firstGain(100, { low: 100, high: 100 })).toBe(100);
});
