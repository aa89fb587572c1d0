import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import { spreadReading, spreadShares, spreadTitle } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const of = (laps: number, runs: number, evenings: number) => ({
  spread: known({ laps, runs, evenings, sessions: 18 }),
});

test("the largest source is named with its share, and says what to work on", () => {
  expect(spreadTitle(of(600, 300, 100))).toBe(
    "Pace laps differ most from lap to lap of a run: about 60 % of the spread",
  );
  expect(spreadReading(of(600, 300, 100))).toMatch(/^Work on equal laps: .* From 18 sessions of this page/);
  expect(spreadTitle(of(300, 600, 100))).toMatch(/most from run to run of an evening: about 60 %/);
  expect(spreadReading(of(300, 600, 100))).toMatch(/^Look at what differs from run to run/);
  expect(spreadTitle(of(100, 300, 600))).toMatch(/most from evening to evening: about 60 %/);
  expect(spreadReading(of(100, 300, 600))).toMatch(/^Look at how an evening begins/);
});

test("the shares add up to all of it, from laps to evenings", () => {
  expect(
    spreadShares({ laps: 600, runs: 300, evenings: 100 }).map(({ source, share }) => [source, share]),
  ).toEqual([
    ["laps", 0.6],
    ["runs", 0.3],
    ["evenings", 0.1],
  ]);
  expect(spreadShares({ laps: 0, runs: 0, evenings: 0 }).map(({ share }) => share)).toEqual([0, 0, 0]);
});

test("laps that are all the same, and too few sessions, say so", () => {
  const few = {
    spread: unknown({ needs: 6, of: "session", each: { needs: 2, of: "pace run" }, has: 3 }),
  } as const;
  expect(spreadTitle(of(0, 0, 0))).toBe("All pace laps are the same");
  expect(spreadTitle(few)).toBe(
    "Where the spread comes from: Not enough sessions with 2 pace runs each yet: 3 of 6",
  );
  for (const review of [of(1, 2, 3), of(0, 0, 0), few]) {
    expectWellFormed(spreadTitle(review));
    expectWellFormed(spreadReading(review));
  }
});
