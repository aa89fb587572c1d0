import { expect, test } from "vitest";
import type { EarlierTarget } from "#domain";
import { sayChanged, sayEarlier } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const best: EarlierTarget = {
  kind: "best",
  value: 84_000,
  by: "2026-11-28",
  until: 1,
  untilDay: "2026-11-05",
};
const mean: EarlierTarget = { kind: "meanOf", laps: 5, value: 84_200, until: 2, untilDay: "2026-11-12" };

test("what a target was, and until when", () => {
  expect(sayEarlier(best)).toBe("Until Thu 5 Nov 2026: best lap 1:24.000 by Sat 28 Nov 2026");
  expect(sayEarlier(mean)).toBe("Until Thu 12 Nov 2026: mean of 5 laps 1:24.200");
  expectWellFormed(sayEarlier(best));
});

test("how often it was changed", () => {
  expect(sayChanged()).toBeUndefined();
  expect(sayChanged([])).toBeUndefined();
  expect(sayChanged([best])).toBe("on Thu 5 Nov 2026");
  expect(sayChanged([best, mean])).toBe("2 times, last on Thu 12 Nov 2026");
});
