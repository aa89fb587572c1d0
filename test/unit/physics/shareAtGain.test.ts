import fc from "fast-check";
import { expect, test } from "vitest";
import { gainForShare, shareAtGain } from "#physics";

test("the share at another gain lies between the two tails", () => {
  // 0.04^(70/55) by hand; 2·Φ(z(0.02)·70/55) by the normal distribution of SciPy 1.17.
  const { low, high } = shareAtGain({ gain: 70, share: 0.04, next: 55 });
  expect(low).toBeCloseTo(0.008_952_512_295_865_913, 12);
  expect(high).toBeCloseTo(0.016_626_606_760_996_934, 12);
  // More gain, more at the limit; here the half-normal tail is the larger one.
  const more = shareAtGain({ gain: 60, share: 0.05, next: 80 });
  expect(more.low).toBeCloseTo(0.105_737_126_344_056_42, 12);
  expect(more.high).toBeCloseTo(0.141_569_069_844_273_62, 12);
});

test("each end of a gain worked out brings the share that was wanted", () => {
  const share = fc.double({ min: 0.002, max: 0.29, noNaN: true });
  fc.assert(
    fc.property(share, share, fc.integer({ min: 5, max: 150 }), (seen, wanted, gain) => {
      const found = gainForShare({ gain, share: seen, wanted });
      if (!found.known) throw new Error("nothing found");
      for (const next of [found.low, found.high]) {
        const { low, high } = shareAtGain({ gain, share: seen, next });
        expect(Math.min(Math.abs(low - wanted), Math.abs(high - wanted))).toBeLessThan(1e-9);
      }
    }),
  );
});

test("what is no figure above zero is refused by name", () => {
  expect(() => shareAtGain({ gain: 0, share: 0.1, next: 50 })).toThrow(/gain/);
  expect(() => shareAtGain({ gain: 60, share: 0, next: 50 })).toThrow(/share/);
  expect(() => shareAtGain({ gain: 60, share: 0.1, next: Number.NaN })).toThrow(/next/);
});
