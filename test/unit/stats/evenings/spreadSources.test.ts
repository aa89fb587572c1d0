import fc from "fast-check";
import { expect, test } from "vitest";
import { spreadSources, varianceComponents } from "../../../../src/stats/evenings/spreadSources.ts";

/** Laps in each run of each evening: unequal everywhere. */
const shape = fc.array(fc.array(fc.integer({ min: 2, max: 6 }), { minLength: 1, maxLength: 4 }), {
  minLength: 2,
  maxLength: 6,
});
const treeOf = (
  counts: readonly (readonly number[])[],
  at: (evening: number, run: number, lap: number) => number,
) =>
  counts.map((runs, evening) =>
    runs.map((laps, run) => Array.from({ length: laps }, (_, lap) => at(evening, run, lap))),
  );
const zero = { evenings: 0, runs: 0, laps: 0 };

test("whatever the numbers, each component is found as large as it is, on average", () => {
  fc.assert(
    fc.property(shape, (counts) => {
      fc.pre(counts.some((runs) => runs.length > 1));
      // A quadratic form of independent effects is expected to be the sum of what it gives for each of them alone.
      const expected = (sets: readonly (readonly (readonly (readonly number[])[])[])[]) =>
        sets.map(varianceComponents).reduce(
          (sum, one) => ({
            evenings: sum.evenings + one.evenings,
            runs: sum.runs + one.runs,
            laps: sum.laps + one.laps,
          }),
          zero,
        );
      const evenings = counts.map((_, i) => treeOf(counts, (evening) => Number(evening === i)));
      const runs = counts.flatMap((own, i) =>
        own.map((__, j) => treeOf(counts, (evening, run) => Number(evening === i && run === j))),
      );
      const laps = counts.flatMap((own, i) =>
        own.flatMap((n, j) =>
          Array.from({ length: n }, (_, k) =>
            treeOf(counts, (evening, run, lap) => Number(evening === i && run === j && lap === k)),
          ),
        ),
      );
      for (const [sets, is] of [
        [evenings, { evenings: 1, runs: 0, laps: 0 }],
        [runs, { evenings: 0, runs: 1, laps: 0 }],
        [laps, { evenings: 0, runs: 0, laps: 1 }],
      ] as const) {
        const found = expected(sets);
        expect(found.evenings).toBeCloseTo(is.evenings, 9);
        expect(found.runs).toBeCloseTo(is.runs, 9);
        expect(found.laps).toBeCloseTo(is.laps, 9);
      }
    }),
  );
});

test("six evenings of two runs that only differ from evening to evening have all their spread there", () => {
  const flat = (ms: number) => Array.from({ length: 5 }, () => ms);
  const sessions = [80_000, 80_200, 80_400, 80_600, 80_800, 81_000].map((ms) => [flat(ms), flat(ms)]);
  const found = spreadSources(sessions);
  if (!found.known) throw new Error("not known");
  // Six values 200 apart: their variance is 200² × 35/2 ÷ 5.
  expect(found.value.evenings).toBeCloseTo(140_000, 6);
  expect(found.value).toMatchObject({ runs: 0, laps: 0, sessions: 6 });
});

test("what comes out below zero is nothing, and evenings that cannot tell are left out and counted", () => {
  const laps = [80_000, 80_400, 79_600, 80_800, 79_200];
  const alike = Array.from({ length: 6 }, () => [laps, laps]);
  expect(spreadSources(alike)).toMatchObject({ known: true, value: { evenings: 0, runs: 0 } });
  const short = [...alike.slice(1), [laps, laps.slice(1)]];
  expect(spreadSources(short)).toEqual({
    known: false,
    reason: { needs: 6, of: "session", each: { needs: 2, of: "pace run" }, has: 5 },
  });
  expect(() => spreadSources([...alike, [laps, [...laps.slice(1), Number.NaN]]])).toThrow(RangeError);
});
