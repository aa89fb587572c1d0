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

  const steady = (finding: string, slope: number) =>
    ({
      known: true,
      value: { finding, perWeek: { slope, low: slope, high: slope } },
    }) as unknown as Reviewed["steadiness"];

  it("takes a steady change of the scatter over the whole period: 0.05 % a week are 252 ms in six", () => {
    const steadiness = steady("falling", -0.05);
    expect(largestChange({ ...none, steadiness, shift: shift(-251, -300, -200) })).toBe("steadier");
    expect(largestChange({ ...none, steadiness, shift: shift(-253, -300, -200) })).toBe("different");
    expect(largestChange({ ...none, steadiness: steady("no clear change", -0.05) })).toBeUndefined();
    const rising = { ...none, steadiness: steady("rising", 0.05) };
    expect(largestChange({ ...rising, thirds: shift(251, 200, 300) as unknown as Reviewed["thirds"] })).toBe(
      "steadier",
    );
    expect(largestChange({ ...rising, thirds: shift(253, 200, 300) as unknown as Reviewed["thirds"] })).toBe(
      "different",
    );
  });

  it("takes the larger of the change within the period and against the one before", () => {
    const both = { ...none, steadiness: steady("falling", -0.05), scatterShift: shift(-0.4, -0.5, -0.3) };
    // 0.4 % of 84 s are 336 ms.
    expect(largestChange({ ...both, shift: shift(-335, -400, -300) })).toBe("steadier");
    expect(largestChange({ ...both, shift: shift(-337, -400, -300) })).toBe("different");
    expect(largestChange({ ...none, scatterShift: shift(-0.4, -0.9, 0.1) })).toBeUndefined();
  });

  it("counts the weeks between sessions of the present page that have a usual lap", () => {
    const steadiness = steady("falling", -0.05);
    const point = (date: string, isPresentPage: boolean, median: number | undefined) => ({
      date,
      startedAt: Date.parse(date),
      isPresentPage,
      median,
    });
    const [first, last] = none.points;
    const points = [
      point("2025-01-01", false, 90_000),
      point("2025-06-01", true, undefined),
      first,
      point("2026-01-20", true, 84_000),
      last,
      point("2026-06-01", true, undefined),
      point("2026-07-01", false, 90_000),
    ] as unknown as ComboReview["points"];
    const asked = { ...none, steadiness, points };
    expect(largestChange({ ...asked, shift: shift(-251, -300, -200) })).toBe("steadier");
    expect(largestChange({ ...asked, shift: shift(-253, -300, -200) })).toBe("different");
    expect(largestChange({ ...none, steadiness, points: [] })).toBeUndefined();
  });

  it("takes the larger of two differences, and at a tie the question asked first", () => {
    const thirds = shift(400, 300, 500) as unknown as Reviewed["thirds"];
    const account = {
      accountChange: known({
        before: 0,
        now: -400,
        change: -400,
        laps: 50,
        lapsBefore: 50,
        lines: [
          { line: "pace" as const, ms: -400, shift: shift(-250, -400, -100) },
          { line: "mistakes" as const, ms: -390, shift: shift(-250, -400, -100) },
          { line: "others" as const, ms: -900, shift: shift(-250, -600, 100) },
          { line: "repeatability" as const, ms: -900, shift: unknown({ because: "no target" }) },
        ],
      }),
    } as unknown as Pick<Reviewed, "accountChange">;
    expect(largestChange({ ...none, ...account, thirds })).toBe("time");
    expect(largestChange({ ...none, ...account, thirds, shift: shift(-401, -500, -300) })).toBe("different");
    expect(largestChange({ ...none, thirds, shift: shift(-10, -20, -5) })).toBe("different");
  });
});
