import fc from "fast-check";
import { expect, test } from "vitest";
import { forceSketch, rimTorque, shareOverLimit } from "#physics";

const finite = { noNaN: true, noDefaultInfinity: true } as const;

test("nothing lies over the limit while the peak is under it, and the highest sample is the peak", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.5, max: 99.9, ...finite }), (peak) => {
      const forces = forceSketch({ peak });
      expect(shareOverLimit(forces)).toBe(0);
      expect(Math.max(...forces)).toBeCloseTo(peak, 9);
    }),
  );
});

test("as much of the turn lies over the limit as was seen, to a sample", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.002, max: 0.299, ...finite }), (share) => {
      expect(Math.abs(shareOverLimit(forceSketch({ share })) - share)).toBeLessThanOrEqual(1 / 600);
    }),
  );
  // However small the share, something is cut off.
  expect(shareOverLimit(forceSketch({ share: 0.0001 }))).toBeGreaterThan(0);
});

test("the turn begins and ends without force, and what is cut off lies in its middle", () => {
  const forces = forceSketch({ share: 0.1 });
  const over = forces.flatMap((force, index) => (force > 100 ? [index / (forces.length - 1)] : []));
  expect(forces[0]).toBeCloseTo(0, 6);
  expect(forces.at(-1)).toBeCloseTo(0, 6);
  expect(Math.min(...forces)).toBeGreaterThanOrEqual(0);
  expect(Math.min(...over)).toBeGreaterThan(0.25);
  expect(Math.max(...over)).toBeLessThan(0.75);
});

test("a figure that is none is refused by name", () => {
  expect(() => forceSketch({ peak: Number.NaN })).toThrow(/peak/);
  expect(() => forceSketch({ share: Number.POSITIVE_INFINITY })).toThrow(/share/);
  expect(shareOverLimit([])).toBe(0);
});

test("the torque at the rim is the share of the wheel's own that the peak takes, and never more than all of it", () => {
  expect(rimTorque({ torque: 8, peak: 90 })).toEqual({ known: true, value: 7.2 });
  expect(rimTorque({ torque: 8, peak: 130 })).toEqual({ known: true, value: 8 });
  expect(rimTorque({ torque: 0, peak: 90 })).toMatchObject({ known: false });
  expect(() => rimTorque({ torque: 8, peak: Number.NaN })).toThrow(/peak/);
});
