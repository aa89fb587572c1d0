import { describe, expect, test } from "vitest";
import { assumedCorner, cornerLine, radiusOfSpeed } from "#physics";
import { cornerTime } from "../../../src/physics/cornerTime.ts";
import { squaredLimit } from "../../../src/physics/squaredLimit.ts";
import data from "./corner-physics.json";

const { expected } = data;
/** The printed speeds use g = 9.8, the project standard gravity. */
const asPrinted = Math.sqrt(data.data.gForPublished / data.data.standardGravity);
const digits = (printed: number) => 10 ** -(String(printed).split(".")[1]?.length ?? 0) / 2;
const relative = (value: number, wanted: number) =>
  expect(Math.abs(value / wanted - 1)).toBeLessThanOrEqual(1e-9);
const plain = { grip: 1.2, braking: 9, drive: 4, approachLength: 900, approachSpeed: 40, exitLength: 900 };

describe("corners against University Physics 1 and geometry by bisection", () => {
  test("speed on flat curves", () => {
    for (const { mu, radius, speed, published } of expected.flatCurve) {
      const found = Math.sqrt(squaredLimit(radius, mu)) * asPrinted;
      relative(found, speed);
      if (published !== 0.13)
        expect(Math.abs(found - published)).toBeLessThanOrEqual(published === 8.9 ? 0.05 : digits(published));
    }
  });

  test("speed on banked curves", () => {
    for (const { mu, radius, bankDeg, speed, published } of expected.bankedCurve) {
      const found = Math.sqrt(squaredLimit(radius, mu, bankDeg)) * asPrinted;
      relative(found, speed);
      expect(Math.abs(found - published)).toBeLessThanOrEqual(digits(published));
    }
  });

  test("the radius on which a speed is the limit", () => {
    for (const { mu, radius, speed } of expected.flatCurve)
      relative(radiusOfSpeed(speed / asPrinted, mu), radius);
    for (const { mu, radius, bankDeg, speed } of expected.bankedCurve)
      relative(radiusOfSpeed(speed / asPrinted, mu, bankDeg), radius);
    // As printed: 15.65 m/s with μ 0.5 is 50 m, 22.5977 m/s banked by 16° is 44 m, to half a unit of the speed's last digit.
    const printed = [
      ...expected.flatCurve.map((given) => ({ ...given, bankDeg: 0 })),
      ...expected.bankedCurve,
    ].filter(({ published }) => published !== 0.13);
    for (const { mu, radius, bankDeg, published } of printed) {
      const within = published === 8.9 ? 0.05 : digits(published);
      const [least, most] = [published - within, published + within].map((speed) =>
        radiusOfSpeed(speed / asPrinted, mu, bankDeg),
      ) as [number, number];
      expect(least).toBeLessThanOrEqual(radius);
      expect(most).toBeGreaterThanOrEqual(radius);
    }
    // 25 m/s on 500 m needs μ = 0.13, to half a unit of its last digit.
    expect(radiusOfSpeed(25, 0.135)).toBeLessThan(500);
    expect(radiusOfSpeed(25, 0.125)).toBeGreaterThan(500);
  });

  test("a lowest speed as printed gives the printed radius, where the car keeps to the inner edge", () => {
    // With all of the road left unused outside, the inner edge is what is driven: 15.65 m/s, μ 0.5: 50 m.
    const [flat] = expected.flatCurve;
    const { corner } = assumedCorner({
      corner: { number: 1, bend: "middling", width: 10 },
      car: { width: 2, grip: flat?.mu ?? 0 },
      before: {},
      lowestSpeed: (flat?.published ?? 0) / asPrinted,
      seenOn: { entry: 8, apex: 0, exit: 8 },
    });
    expect(Math.abs(corner.innerRadius - 50)).toBeLessThanOrEqual(0.04);
  });

  test("time of even acceleration along a straight", () => {
    for (const { v, a, S, time } of expected.accelerateOverDistance) {
      const straight = [{ length: S, limit: Infinity }];
      relative(cornerTime(straight, { approachSpeed: v, drive: a, braking: 1 }), time);
    }
  });

  test("braking distance: just long enough is just enough", () => {
    for (const { speed, deceleration, distance } of expected.braking) {
      const way = [
        { length: distance, limit: Infinity },
        { length: 1, limit: 1e-12 },
      ];
      const seconds = cornerTime(way.slice(0, 1), {
        approachSpeed: speed,
        drive: 1e-9,
        braking: deceleration,
      });
      expect(seconds).toBeCloseTo(distance / speed, 6);
      const stopping = cornerTime(way, { approachSpeed: speed, drive: 1e-9, braking: deceleration });
      expect(stopping).toBeGreaterThan(speed / deceleration);
    }
  });

  test("the widest arc", () => {
    for (const { r, W, angleDeg, R } of expected.widestArc) {
      const line = cornerLine({
        ...plain,
        innerRadius: r,
        roadWidth: W + 1.8,
        carWidth: 1.8,
        angle: angleDeg,
        unused: { entry: 0, apex: 0, exit: 0 },
      });
      if (!line.known) throw new Error(JSON.stringify(line.reason));
      relative(line.value.widestRadius, R);
      relative(line.value.entryRadius, R);
      expect(line.value.seconds).toBe(0);
    }
  });

  test("radii with road left unused", () => {
    for (const given of expected.withUnusedRoad) {
      const line = cornerLine({
        ...plain,
        innerRadius: given.r,
        roadWidth: given.W + 1.8,
        carWidth: 1.8,
        angle: given.angleDeg,
        apexAngle: given.apexAngleDeg,
        unused: { entry: given.entry, apex: given.apex, exit: given.exit },
      });
      if (!line.known) throw new Error(JSON.stringify(line.reason));
      relative(line.value.entryRadius, given.entryRadius);
      relative(line.value.exitRadius, given.exitRadius);
    }
  });
});
