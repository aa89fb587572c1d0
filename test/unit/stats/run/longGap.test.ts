import { describe, expect, it } from "vitest";
import type { Lap } from "#domain";
import { longGap } from "#stats";

const minute = 60_000;
const usual = 84_000;
/** Laps typed at these minutes; the last one is asked about. */
function gapOf(minutes: readonly number[], fields: Partial<Lap> = {}, usualMs: number | undefined = usual) {
  const laps = minutes.map(
    (at, index): Lap => ({
      id: `l${index}`,
      n: index + 1,
      ms: 84_000,
      decimals: 3,
      source: "typed",
      remarks: [],
      createdAt: at * minute,
      updatedAt: at * minute,
      ...(index === minutes.length - 1 ? fields : {}),
    }),
  );
  return longGap({ laps }, `l${minutes.length - 1}`, usualMs);
}

describe("a gap between two laps of one run", () => {
  it("is long from more than three usual laps on", () => {
    expect(gapOf([0, 1.4, 2.8, 11.8])).toBe(9 * minute);
    expect(gapOf([0, 1.4, 1.4 + (3 * usual) / minute])).toBeUndefined();
    expect(gapOf([0, 1.4, 1.4 + (3 * usual + 1) / minute])).toBe(3 * usual + 1);
  });

  it("says nothing of a first lap, and nothing where no usual lap is known", () => {
    expect(gapOf([20])).toBeUndefined();
    expect(longGap({ laps: [] }, "gone", usual)).toBeUndefined();
    expect(gapOf([0, 9], {}, Number.POSITIVE_INFINITY)).toBeUndefined();
  });

  it("is none between laps that came in a block or from a table", () => {
    expect(gapOf([0, 1.4, 11, 11])).toBeUndefined();
    expect(gapOf([0, 0, 9])).toBeUndefined();
    expect(gapOf([0, 9], { source: "imported" })).toBeUndefined();
    expect(gapOf([0, 9], { source: "memory" })).toBe(9 * minute);
  });

  it("is none where a clock went back, or jumped by more than a day", () => {
    expect(gapOf([20, 1])).toBeUndefined();
    expect(gapOf([0, 24 * 60])).toBe(24 * 60 * minute);
    expect(gapOf([0, 24 * 60 + 1])).toBeUndefined();
  });
});
