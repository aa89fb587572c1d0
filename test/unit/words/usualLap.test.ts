import { expect, test } from "vitest";
import { sayLevel, sayUsual } from "#words";

test("the usual lap of laps typed in tenths is not shown to thousandths", () => {
  expect(sayUsual(84_450, 1)).toBe("1:24.4");
  expect(sayUsual(84_450.5, 3)).toBe("1:24.451");
  expect(sayUsual(84_450)).toBe("1:24.450");
});

test("a level is rounded to the hundredth, because none is known to a thousandth", () => {
  expect(sayLevel(84_317.4)).toBe("1:24.32");
  expect(sayLevel(59_996)).toBe("1:00.00");
});
