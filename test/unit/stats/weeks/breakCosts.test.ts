import { describe, expect, it } from "vitest";
import { breakCosts } from "#stats";

const session = (date: string, medianMs: number) => ({ date, medianMs, laps: 20 });
const before = [
  session("2026-01-01", 84_000),
  session("2026-01-03", 83_900),
  session("2026-01-05", 84_000),
  session("2026-01-07", 83_900),
  session("2026-01-09", 84_000),
];

describe("what a break cost", () => {
  it("is the step over it less the usual step, with the interval of one new observation", () => {
    const [found] = breakCosts([...before, session("2026-01-20", 84_600)]);
    // Steps −100, 100, −100, 100: mean 0, deviation 115.47. Student's t for 3 degrees of freedom and 0.95 is 2.353
    // (NIST/SEMATECH e-Handbook 1.3.6.7.2), so ± 2.353 · 115.47 · √(1 + 1/4) = ± 303.8.
    expect(found?.days).toBe(11);
    if (!found?.cost.known) throw new Error("a cost is known");
    expect(found.cost.value.estimate).toBeCloseTo(600, 6);
    expect(found.cost.value.high - 600).toBeCloseTo(303.8, 0);
    expect(600 - found.cost.value.low).toBeCloseTo(303.8, 0);
  });

  it("does not count what practice gains from session to session anyway", () => {
    const learning = [84_400, 84_200, 84_100, 83_900, 83_800].map((ms, i) =>
      session(`2026-01-0${2 * i + 1}`, ms),
    );
    // Steps −200, −100, −200, −100: the usual one is −150.
    const [found] = breakCosts([...learning, session("2026-01-20", 84_000)]);
    expect(found?.cost.known && found.cost.value.estimate).toBeCloseTo(200 + 150, 9);
  });

  it("says after how many laps the old level was back, or that it is not", () => {
    const after = [
      session("2026-01-20", 84_600),
      session("2026-01-22", 84_000),
      session("2026-01-24", 83_500),
    ];
    expect(breakCosts([...before, ...after])[0]?.lapsUntilBack).toBe(40);
    expect(breakCosts([...before, ...after.slice(0, 1)])[0]?.lapsUntilBack).toBeUndefined();
  });

  it("counts nine days as no break, and ten as one", () => {
    expect(breakCosts([session("2026-01-01", 84_000), session("2026-01-10", 84_000)])).toEqual([]);
    expect(breakCosts([session("2026-01-01", 84_000), session("2026-01-11", 84_000)])).toHaveLength(1);
  });

  it("ends at the next session driven, also one too short for a usual lap", () => {
    const first = { ...session("2026-01-01", 84_000), drivenSince: ["2026-01-12"] };
    expect(breakCosts([first, session("2026-01-14", 84_000)])).toMatchObject([
      { from: "2026-01-01", to: "2026-01-12", days: 11 },
    ]);
    const driven = { ...first, drivenSince: ["2026-01-07"] };
    expect(breakCosts([driven, session("2026-01-14", 84_000)])).toEqual([]);
  });

  it("needs four ordinary steps, and steps that differ", () => {
    expect(breakCosts([...before.slice(0, 2), session("2026-01-20", 84_600)])[0]?.cost).toEqual({
      known: false,
      reason: { needs: 4, of: "step of neighbouring sessions", has: 1 },
    });
    const alike = before.map((one) => ({ ...one, medianMs: 84_000 }));
    expect(breakCosts([...alike, session("2026-01-20", 84_600)])[0]?.cost).toEqual({
      known: false,
      reason: { because: "sessions that do not differ" },
    });
    expect(breakCosts([...before.slice(0, 4), session("2026-01-20", 84_600)])[0]?.cost).toMatchObject({
      reason: { has: 3 },
    });
    expect(breakCosts([session("2026-01-01", 84_000), session("2026-01-20", 84_600)])[0]?.cost).toMatchObject(
      {
        reason: { has: 0 },
      },
    );
    expect(breakCosts([])).toEqual([]);
  });
});
