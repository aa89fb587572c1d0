import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import { overnightReading, overnightTitle } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const of = (estimate: number, low: number, high: number) => ({
  overnight: known({ estimate, low, high, pairs: 12 }),
});

test("evenings that begin slower ask for more laps before it counts", () => {
  const review = of(212, 104, 330);
  expect(overnightTitle(review)).toBe(
    "An evening begins slower by 0.21 s than the one before ended, very likely at least 0.10 s",
  );
  expect(overnightReading(review)).toBe(
    "The first five pace laps beside the last five of the evening before, 12 times on this page, whatever the period: between 0.10 and 0.33 s slower. Part of what an evening brings is warming up: begin with more laps that do not count, and judge what is new by how the next evening begins.",
  );
});

test("evenings that begin faster do not say why", () => {
  const review = of(-122, -213, -3);
  expect(overnightTitle(review)).toBe(
    "An evening begins faster by 0.12 s than the one before ended, very likely",
  );
  expect(overnightReading(review)).toContain("up to 0.22 s faster");
  expect(overnightReading(review)).toContain("These figures cannot tell which");
});

test("where chance may have done it nothing is claimed, and with too few evenings it says what is missing", () => {
  expect(overnightTitle(of(-60, -149, 123))).toBe(
    "An evening begins not clearly faster or slower than the one before ended",
  );
  expect(overnightReading(of(-60, -149, 123))).toContain("between 0.15 s faster and 0.13 s slower. Judge");
  expect(overnightTitle(of(0, 0, 0))).toBe("An evening begins as the one before ended");
  const few = { overnight: unknown({ needs: 6, of: "pair of evenings in a row", has: 2 }) } as const;
  expect(overnightTitle(few)).toBe("What stays overnight: Not enough pairs of evenings in a row yet: 2 of 6");
  for (const review of [of(212, 104, 330), of(-122, -213, -3), of(0, -9, 9), of(0, 0, 0), few]) {
    expectWellFormed(overnightTitle(review));
    expectWellFormed(overnightReading(review));
  }
});
