import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import type { SessionTrend } from "#stats";
import { acrossReading, acrossTitle, sayAcross } from "#words";

const trend = (fields: Partial<SessionTrend>): SessionTrend => ({
  sessions: 9,
  p: 0.01,
  tau: -0.8,
  finding: "falling",
  perWeek: { slope: -0.02, low: -0.03, high: -0.01 },
  per100Laps: undefined,
  change: 0.1,
  moreSessions: 4,
  ...fields,
});
const none = trend({ finding: "no clear change", perWeek: { slope: 0, low: -0.01, high: 0.02 } });
const few = unknown({ needs: 5, of: "combo with this figure", has: 4 });

describe("figures across combos in words", () => {
  it.each([
    ["scatter", 0.374, "0.37 %"],
    ["usualToBest", 1.2345, "1.23 %"],
    ["usualToBest", -0.051, "−0.05 %"],
    ["cleanShare", 87.6, "88 %"],
    ["mistakes", 6.26, "6.3"],
    ["lapsUntilOnThePace", 210, "210"],
    ["toReference", 0.97, "+0.97 %"],
    ["toReference", -0.3, "−0.30 %"],
  ] as const)("%s of %s is %s", (figure, value, said) => {
    expect(sayAcross(figure, value)).toBe(said);
  });

  it("a clear fall is told with what is sure of it", () => {
    expect(acrossTitle("scatter", known(trend({})), 70)).toBe(
      "How much laps differ from combo to combo: lower by 0.20 % in 10 weeks, very likely at least 0.10 %",
    );
    expect(acrossReading("scatter", known(trend({})))).toMatch(
      /^From lap to lap, .* From 9 combos, each where it was first driven: between 0\.01 and 0\.03 % lower a week\. Circuits and cars differ/,
    );
  });

  it("no clear change is said as such, and what it rules out stands in the reading", () => {
    expect(acrossTitle("scatter", known(none), 70)).toBe(
      "How much laps differ from combo to combo: not getting lower or higher so far",
    );
    expect(acrossReading("scatter", known(none))).toContain("between 0.01 % lower and 0.02 % higher a week");
  });

  it("of the clean share, less is worse", () => {
    const falling = trend({ perWeek: { slope: -2, low: -3, high: -1 } });
    expect(acrossTitle("cleanShare", known(falling), 70)).toBe(
      "Clean share from combo to combo: lower by 20.0 points in 10 weeks, very likely at least 10.0 points",
    );
    const flat = trend({ finding: "no clear change", perWeek: { slope: 0, low: -1, high: 2 } });
    expect(acrossTitle("cleanShare", known(flat), 70)).toBe(
      "Clean share from combo to combo: not getting higher or lower so far",
    );
    expect(acrossReading("cleanShare", known(flat))).toContain(
      "between 2.0 points higher and 1.0 points lower a week",
    );
  });

  it("with too few combos for a finding the title names what is drawn, and the reading how many there are", () => {
    expect(acrossTitle("mistakes", few, 0)).toBe("Mistakes, combo by combo");
    expect(acrossReading("mistakes", few)).toMatch(
      /cannot be told yet: not enough combos with this figure yet: 4 of 5\.$/,
    );
  });
});
