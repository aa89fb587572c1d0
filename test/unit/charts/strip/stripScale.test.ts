import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StripLap } from "#domain";
import { stripScale } from "../../../../src/charts/strip/stripScale.ts";

const lapsOf = (times: readonly number[]): StripLap[] =>
  times.map((ms, index) => ({ id: `lap ${index}`, name: `Lap ${index + 1}`, ms }));

describe("stripScale", () => {
  it("reaches from the fastest to the slowest lap", () => {
    expect(stripScale(lapsOf([84_900, 84_200, 84_400, 84_600]))).toEqual({
      fastest: 84_200,
      slowest: 84_900,
    });
  });

  it("is not flattened by a spin: a lap nine seconds off is left out", () => {
    const laps = lapsOf([84_600, 84_200, 84_400, 84_300, 84_500]);
    const spin: StripLap = { id: "spin", name: "Lap 6", ms: 93_500, remarks: [{ kind: "spin" }] };
    expect(stripScale([...laps, spin])).toEqual(stripScale(laps));
  });

  it("takes a lap with a remark in that lies among the others", () => {
    const laps = lapsOf([84_600, 84_200, 84_400, 84_300, 84_500]);
    const cut: StripLap = { id: "cut", name: "Lap 6", ms: 84_900, remarks: [{ kind: "cut" }] };
    expect(stripScale([...laps, cut])?.slowest).toBe(84_900);
  });

  it("takes PB, usual and target in, but not a target of another world", () => {
    const laps = lapsOf([84_600, 84_200, 84_400, 84_300, 84_500]);
    expect(stripScale(laps, { pb: { ms: 83_744 }, usual: { ms: 84_400 } })?.fastest).toBe(83_744);
    expect(stripScale(laps, { target: { ms: 60_000 } })).toEqual(stripScale(laps));
  });

  it("draws no mountains out of laps that are all alike", () => {
    const { fastest = 0, slowest = 0 } = stripScale(lapsOf([80_000, 80_001, 80_000])) ?? {};
    expect(slowest - fastest).toBeCloseTo(320, 0);
    expect((fastest + slowest) / 2).toBeCloseTo(80_000.5, 1);
  });

  it("goes by laps with remarks where there are no others, by the lines where no lap has a time", () => {
    const spin: StripLap = { id: "spin", name: "Lap 1", ms: 93_500, remarks: [{ kind: "spin" }] };
    expect(stripScale([spin])?.slowest).toBeGreaterThan(93_500);
    expect(stripScale([], { pb: { ms: 83_000 }, usual: { ms: 84_000 } })).toEqual({
      fastest: 83_000,
      slowest: 84_000,
    });
    expect(stripScale([{ id: "lost", name: "Lap 1" }])).toBeUndefined();
  });

  it("always holds the middle lap and at least half of the clean laps, and keeps its ends in order", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 20_000, max: 200_000 }), { minLength: 1, maxLength: 60 }),
        (times) => {
          const scale = stripScale(lapsOf(times));
          if (scale === undefined) throw new Error("a lap with a time has a scale");
          expect(scale.slowest).toBeGreaterThan(scale.fastest);
          const held = times.filter((ms) => ms >= scale.fastest && ms <= scale.slowest);
          expect(held.length * 2).toBeGreaterThanOrEqual(times.length);
        },
      ),
      { seed: 20261129, numRuns: 300 },
    );
  });
});
