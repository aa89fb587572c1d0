import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import { type ComboReview, largestChange } from "#stats";

type Reviewed = Parameters<typeof largestChange>[0];
const none: Reviewed = {
  steadiness: unknown({ because: "no target" }),
  scatterShift: unknown({ because: "no target" }),
  accountChange: unknown({ because: "no target" }),
  shift: unknown({ because: "no target" }),
  thirds: unknown({ because: "no target" }),
  points: ["2026-01-01", "2026-02-12"].map((date) => ({
    date,
    startedAt: Date.parse(date),
    isPresentPage: true,
    median: 84_000,
  })) as unknown as ComboReview["points"],
};
const shift = (estimate: number, low: number, high: number) =>
  known({ estimate, low, high, sessions: 5, sessionsBefore: 5 });

describe("the largest change", () => {
  it("is none where nothing is known or clear of chance", () => {
    expect(largestChange(none)).toBeUndefined();
    expect(largestChange({ ...none, shift: shift(-900, -2000, 10) })).toBeUndefined();
  });

  it("is told in ms a lap: 0.2 % of 84 s is 168 ms", () => {
    const scatterShift = shift(-0.2, -0.3, -0.1);
    expect(largestChange({ ...none, scatterShift, shift: shift(-100, -150, -50) })).toBe("steadier");
    expect(largestChange({ ...none, scatterShift, shift: shift(-200, -250, -150) })).toBe("different");
  });

  it("takes a line of the account only where its sessions moved the same way", () => {
    const change = (ms: number, found: ReturnType<typeof shift>) => ({
      ...none,
      accountChange: known({
        before: 0,
        now: ms,
        change: ms,
        laps: 50,
        lapsBefore: 50,
        lines: [{ line: "pace" as const, ms, shift: found }],
      }),
    });
    expect(largestChange(change(-300, shift(-250, -400, -100)))).toBe("time");
    expect(largestChange(change(300, shift(-250, -400, -100)))).toBeUndefined();
  });
});
