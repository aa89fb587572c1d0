import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apexTimes, type Corner, cornerLine } from "#physics";

const corner: Corner = {
  innerRadius: 25,
  roadWidth: 11.8,
  carWidth: 1.8,
  angle: 90,
  unused: { entry: 1, apex: 0.5, exit: 1 },
  grip: 1.2,
  braking: 9,
  drive: 4,
  approachLength: 200,
  approachSpeed: 50,
  exitLength: 300,
};
const line = (changes: Partial<Corner> = {}) => {
  const figure = cornerLine({ ...corner, ...changes });
  if (!figure.known) throw new Error(JSON.stringify(figure.reason));
  return figure.value;
};

describe("a corner's line", () => {
  test("at 90° with all of the road used, both arcs are r + 3.414·W", () => {
    const full = line({ unused: { entry: 0, apex: 0, exit: 0 } });
    expect(full.entryRadius).toBeCloseTo(25 + 10 * 3.414213562, 6);
    expect(full.seconds).toBe(0);
    expect(full.nothingToGain).toBe(true);
  });

  test("unused road costs time, more of it costs more", () => {
    const little = line({ unused: { entry: 0.5, apex: 0, exit: 0.5 } });
    const much = line({ unused: { entry: 2, apex: 1, exit: 2 } });
    expect(little.seconds).toBeGreaterThan(0);
    expect(much.seconds).toBeGreaterThan(little.seconds);
    expect(much.entrySpeed).toBeLessThan(much.widestSpeed);
    expect(much.nothingToGain).toBe(false);
  });

  test("a corner taken flat out has nothing to gain from a wider line", () => {
    const flat = line({
      innerRadius: 400,
      approachSpeed: 40,
      topSpeed: 42,
      exitLength: 400,
      approachLength: 500,
    });
    expect(flat.seconds).toBeLessThan(0);
    expect(flat.nothingToGain).toBe(true);
  });

  test("straights too short for the lines are lengthened, and it says so", () => {
    const short = line({ approachLength: 0, exitLength: 0 });
    expect(short.lengthened.exit).toBeCloseTo((line().widestRadius - 25) * Math.sin(Math.PI / 4), 1);
    expect(short.lengthened.approach).toBeGreaterThan(short.lengthened.exit);
    expect(line().lengthened).toEqual({ approach: 0, exit: 0 });
  });

  test("what is missing of the straight for braking is v² less the corner's v², over twice the braking", () => {
    // Nothing unused, apex in the middle: one arc of 25 + 10·3.414 m, grip 1.2, from 50 m/s at 9 m/s² of braking.
    const short = line({ unused: { entry: 0, apex: 0, exit: 0 }, approachLength: 0 });
    const inCorner = 1.2 * 9.80665 * (25 + 34.14213562);
    const turningIn = 34.14213562 * Math.SQRT1_2;
    expect(short.lengthened.approach).toBeCloseTo(turningIn + (50 ** 2 - inCorner) / (2 * 9), 4);
  });

  test("with weak brakes the tighter line needs the longer straight, and both are given it", () => {
    const weak = { braking: 3, approachLength: 0 };
    const tight = line({ ...weak, unused: { entry: 2, apex: 1, exit: 2 } });
    const wide = line({ ...weak, unused: { entry: 0, apex: 0, exit: 0 } });
    expect(tight.lengthened.approach).toBeGreaterThan(wide.lengthened.approach);
  });

  test("a corner banked beyond the angle of friction has no limit", () => {
    expect(line({ banking: 60, grip: 1 }).entrySpeed).toBe(Number.POSITIVE_INFINITY);
    expect(line({ banking: 5 }).entrySpeed).toBeGreaterThan(line().entrySpeed);
  });

  test("bad geometry is refused with the place named", () => {
    const reason = (changes: Partial<Corner>) => {
      const figure = cornerLine({ ...corner, ...changes });
      return figure.known ? undefined : figure.reason;
    };
    expect(reason({ roadWidth: 1.8 })).toEqual({
      because: "car wider than the road",
      roadWidth: 1.8,
      carWidth: corner.carWidth,
    });
    for (const angle of [4, 201])
      expect(reason({ angle })).toEqual({
        because: "out of range",
        measure: "angle of the corner",
        from: 5,
        to: 200,
        value: angle,
      });
    expect(reason({ unused: { entry: 6, apex: 5, exit: 0 } })).toMatchObject({
      because: "more unused than there is",
      unused: 11,
    });
    expect(reason({ unused: { entry: -1, apex: 0, exit: 0 } })).toEqual({
      because: "below zero",
      measure: "unused at entry",
      value: -1,
    });
    expect(reason({ grip: 0 })).toEqual({ because: "not above zero", measure: "grip", value: 0 });
    expect(reason({ apexAngle: 90 })).toMatchObject({ because: "apex outside the corner", apexAngle: 90 });
    const outside = { because: "apex outside the corner" };
    expect(reason({ apexAngle: 0 })).toMatchObject(outside);
    expect(reason({ angle: 200, apexAngle: 180 })).toMatchObject(outside);
    expect(reason({ angle: 200, apexAngle: 20 })).toMatchObject(outside);
    expect(reason({ banking: 90 })).toMatchObject({ measure: "banking", value: 90 });
    expect(reason({ topSpeed: 49 })).toMatchObject({ because: "top speed under the approach" });
    expect(() => cornerLine({ ...corner, drive: Number.NaN })).toThrow(/drive.*NaN/);
  });

  test("what lies just within the bounds is no bad geometry", () => {
    for (const changes of [
      { angle: 5, approachLength: 2000, exitLength: 2000 },
      { angle: 200 },
      { topSpeed: 50 },
      { unused: { entry: 9, apex: 1, exit: 0 } },
    ])
      expect(cornerLine({ ...corner, ...changes }).known).toBe(true);
  });

  test("the best apex is the fastest of those on offer, and not the first or the last of them", () => {
    const offered = apexTimes({ ...corner, approachLength: 400, exitLength: 400 });
    if (!offered.known) throw new Error(JSON.stringify(offered.reason));
    const { best, points } = offered.value;
    expect(points).toContain(best);
    expect(best.seconds).toBe(Math.min(...points.map(({ seconds }) => seconds)));
    expect(best.apexAngle).toBeGreaterThan(points[0]?.apexAngle ?? Number.POSITIVE_INFINITY);
    expect(best.apexAngle).toBeLessThan(points.at(-1)?.apexAngle ?? 0);
    expect(points.every(({ apexAngle }) => apexAngle > 0 && apexAngle < 90)).toBe(true);
  });

  test("an apex whose line does not fit the straights is not on offer", () => {
    const apexes = (changes: Partial<Corner>) => {
      const offered = apexTimes({ ...corner, approachLength: 400, exitLength: 400, ...changes });
      if (!offered.known) throw new Error(JSON.stringify(offered.reason));
      return offered.value.points.map(({ apexAngle }) => apexAngle);
    };
    const refused = (changes: Partial<Corner>) => apexTimes({ ...corner, ...changes });
    const all = apexes({});
    // The less a half turns, the wider its arc and the more straight it takes: a late apex at the exit, an early one
    // on the approach.
    const shortExit = apexes({ exitLength: 30 });
    expect(shortExit.at(-1)).toBeLessThan(Number(all.at(-1)));
    expect(shortExit[0]).toBe(all[0]);
    const shortApproach = apexes({ approachSpeed: 20, approachLength: 30 });
    expect(shortApproach[0]).toBeGreaterThan(Number(all[0]));
    expect(shortApproach.at(-1)).toBe(all.at(-1));
    // With the apex in the middle, one arc of 59.14 m allows √(1.2·9.80665·59.14) m/s. Braking from 50 m/s to it at
    // 5 m/s² takes 180.4 m, and the car turns in 24.1 m before the corner: 204.5 m. Later apexes take more.
    const slow = (approachLength: number) => apexes({ approachLength, braking: 5 });
    expect(slow(205)).toContain(45);
    expect(slow(204)).not.toContain(45);
    expect(slow(204).length).toBeGreaterThan(1);
    expect(Math.max(...slow(204))).toBeLessThan(45);
    expect(refused({ approachLength: 0, exitLength: 0 })).toEqual({
      known: false,
      reason: { because: "straights too short" },
    });
    expect(refused({ roadWidth: 1 })).toMatchObject({ reason: { because: "car wider than the road" } });
  });

  test("in a hairpin of more than 180° neither half turns through 180°", () => {
    const offered = apexTimes({
      ...corner,
      angle: 200,
      approachSpeed: 15,
      approachLength: 2e4,
      exitLength: 2e4,
    });
    if (!offered.known) throw new Error(JSON.stringify(offered.reason));
    const apexes = offered.value.points.map(({ apexAngle }) => apexAngle);
    expect(Math.min(...apexes)).toBeGreaterThan(20);
    expect(Math.max(...apexes)).toBeLessThan(180);
    expect(apexes).toContain(22);
    expect(apexes).toContain(178);
  });

  test("time against the friction circle walked in a million small steps", () => {
    // One arc only: from 15 m/s, drive 4, μ 1.2, centre radius as in the project; integrated by Euler steps here.
    const only = { ...corner, unused: { entry: 0, apex: 0, exit: 0 }, approachSpeed: 15 };
    const times = apexTimes({ ...only, approachLength: 60, exitLength: 60 });
    if (!times.known) throw new Error(JSON.stringify(times.reason));
    const middle = times.value.points.find((point) => point.apexAngle === 45);
    const W = 10 / (1 - Math.SQRT1_2);
    const limit = 1.2 * 9.80665 * (25 + W);
    const reach = W * Math.SQRT1_2;
    const arcs = ((25 + W + 0.9) * Math.PI) / 2;
    const total = 120 - 2 * reach + arcs;
    let squared = 15 ** 2;
    let seconds = 0;
    const ds = total / 1e6;
    for (let at = 0; at < total - ds / 2; at += ds) {
      const onArc = at >= 60 - reach && at < 60 - reach + arcs;
      const left = onArc ? Math.sqrt(Math.max(0, 1 - (squared / limit) ** 2)) : 1;
      const next = onArc ? Math.min(limit, squared + 8 * left * ds) : squared + 8 * ds;
      seconds += (2 * ds) / (Math.sqrt(squared) + Math.sqrt(next));
      squared = next;
    }
    expect(middle?.seconds).toBeCloseTo(seconds, 4);
  });

  test("a longer straight after the corner never moves the best apex earlier", () => {
    const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        range(15, 80),
        range(30, 120),
        range(3, 12),
        range(50, 300),
        (innerRadius, angle, drive, more) => {
          const shape = { ...corner, innerRadius, angle, drive, approachLength: 400, topSpeed: 70 };
          const short = apexTimes({ ...shape, exitLength: 120 });
          const long = apexTimes({ ...shape, exitLength: 120 + more });
          if (!short.known || !long.known) return;
          expect(long.value.best.apexAngle).toBeGreaterThanOrEqual(short.value.best.apexAngle - 1e-9);
        },
      ),
      { seed: 7, numRuns: 60 },
    );
  });
});
