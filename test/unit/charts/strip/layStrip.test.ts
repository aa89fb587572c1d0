import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { remarkKinds, type StripLap } from "#domain";
import { layStrip, type StripSize } from "../../../../src/charts/strip/layStrip.ts";
import type { StripLines, StripScale } from "../../../../src/charts/strip/stripScale.ts";

const lapsOf = (times: readonly (number | undefined)[]): StripLap[] =>
  times.map((ms, index) => ({
    id: `lap ${index}`,
    name: `Lap ${index + 1}`,
    ...(ms !== undefined && { ms }),
  }));

const heights = { full: 120, narrow: 76, small: 24 } as const;

function lay(
  laps: readonly StripLap[],
  {
    lines = {},
    scale,
    size = "full",
    width = size === "small" ? 96 : 616,
  }: { lines?: StripLines; scale?: StripScale; size?: StripSize; width?: number } = {},
) {
  return layStrip({ laps, lines, scale, size, width });
}

const xs = (laps: readonly StripLap[]) => lay(laps).places.map(({ x }) => x);

describe("layStrip", () => {
  it("sets laps in order from left to right, the faster one lower", () => {
    const [first, second, third] = lay(lapsOf([84_600, 84_200, 84_400])).places;
    expect(first?.x).toBeLessThan(second?.x ?? 0);
    expect(second?.x).toBeLessThan(third?.x ?? 0);
    expect(first?.y).toBeLessThan(third?.y ?? 0);
    expect(third?.y).toBeLessThan(second?.y ?? 0);
  });

  it("grows from the left: the laps that are there stay where they are until the tenth", () => {
    const times = Array.from({ length: 10 }, (_, index) => 84_000 + index * 50);
    const nine = xs(lapsOf(times.slice(0, 9)));
    expect(xs(lapsOf(times)).slice(0, 9)).toEqual(nine);
    expect(xs(lapsOf([...times, 84_000]))[0]).toBeLessThan(nine[0] ?? 0);
  });

  it("leaves a gap between two runs", () => {
    const laps = lapsOf([84_600, 84_200, 84_400, 84_500]).map((lap, index) => ({
      ...lap,
      run: index < 2 ? 0 : 1,
    }));
    const [a = 0, b = 0, c = 0, d = 0] = xs(laps);
    expect(c - b).toBeGreaterThan((b - a) * 1.5);
    expect(d - c).toBeCloseTo(b - a, 6);
  });

  it("stands a lap far off at the edge under a sign, and one without a time there without", () => {
    const laps = lapsOf([84_600, 84_200, 84_400, 95_000, undefined, 70_000]);
    const { places, paths } = lay(laps);
    expect(places[3]?.y).toBe(places[4]?.y);
    expect(places[3]?.y).toBeLessThan(Math.min(...places.slice(0, 3).map(({ y }) => y)));
    expect(places[5]?.y).toBeGreaterThan(Math.max(...places.slice(0, 3).map(({ y }) => y)));
    const signs = paths.find(({ how, ink }) => how === "drawn" && ink === "soft")?.path ?? "";
    expect(signs.match(/M/g)).toHaveLength(2);
  });

  it("draws a time at the same height in two strips of one scale", () => {
    const scale = { fastest: 83_000, slowest: 86_000 };
    const [one] = lay(lapsOf([84_600, 84_200]), { scale }).places;
    const other = lay(lapsOf([85_900, 83_100, 84_600]), { scale }).places[2];
    expect(one?.y).toBe(other?.y);
  });

  it("says of a line beyond its edge which way it lies", () => {
    const { lines } = lay(lapsOf([84_600, 84_200, 84_400]), {
      lines: { pb: { ms: 84_100 }, target: { ms: 70_000 }, usual: { ms: 99_000 } },
    });
    expect(lines.map(({ of, beyond }) => [of, beyond])).toEqual([
      ["usual", "up"],
      ["pb", undefined],
      ["target", "down"],
    ]);
  });

  it("thins what there is no room for, keeps the first, the last and the fastest, and no lap twice", () => {
    const times = Array.from({ length: 500 }, (_, index) => 84_000 + ((index * 7919) % 701));
    times[250] = 83_500;
    const { places } = lay(lapsOf(times));
    expect(places.length).toBeLessThanOrEqual(200);
    expect(places.length).toBeGreaterThan(150);
    expect(new Set(places.map(({ lap }) => lap.id)).size).toBe(places.length);
    expect(places.map(({ lap }) => lap.id)).toEqual(expect.arrayContaining(["lap 0", "lap 250", "lap 499"]));
  });

  it("draws so many laps with no more paths than a few of the same kinds", () => {
    const few = lay(lapsOf([84_000, 84_100, undefined]));
    const many = lay(
      lapsOf(Array.from({ length: 150 }, (_, index) => (index % 9 === 0 ? undefined : 84_000 + index))),
    );
    expect(many.paths.length).toBe(few.paths.length);
  });

  const lap = fc.record(
    {
      ms: fc.integer({ min: 20_000, max: 400_000 }),
      remarks: fc.array(fc.record({ kind: fc.constantFrom(...remarkKinds.map(({ kind }) => kind)) }), {
        maxLength: 2,
      }),
      isFromMemory: fc.boolean(),
      surface: fc.constantFrom("dry" as const, "damp" as const, "wet" as const),
      isBest: fc.boolean(),
    },
    { requiredKeys: ["remarks"] },
  );

  it.each(["full", "narrow", "small"] as const)(
    "keeps whatever there is inside a %s strip, in order",
    (size) => {
      fc.assert(
        fc.property(
          fc.array(lap, { maxLength: 260 }),
          fc.integer({ min: 160, max: 900 }),
          fc.option(fc.record({ ms: fc.integer({ min: 20_000, max: 400_000 }) }), { nil: undefined }),
          (some, wide, pb) => {
            const laps = some.map(
              (one, index): StripLap => ({ ...one, id: `${index}`, name: `Lap ${index + 1}` }),
            );
            const width = size === "small" ? 96 : wide;
            const { places, lines, paths } = lay(laps, { size, width, lines: { pb } });
            for (const { x, y } of places) {
              expect(x).toBeGreaterThan(0);
              expect(x).toBeLessThan(width);
              expect(y).toBeGreaterThan(0);
              expect(y).toBeLessThan(heights[size]);
            }
            for (const { y } of lines) expect(y >= 0 && y <= heights[size]).toBe(true);
            const order = places.map(({ lap: { id } }) => Number(id));
            expect(order).toEqual([...order].sort((a, b) => a - b));
            expect(paths.map(({ path }) => path).join("")).not.toMatch(/NaN|Infinity/);
          },
        ),
        { seed: 20261129, numRuns: 200 },
      );
    },
  );
});
