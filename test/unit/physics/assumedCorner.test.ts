import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bends, straights } from "#domain";
import {
  apexTimes,
  assumedCorner,
  bendTaken,
  type CornerFacts,
  cornerLine,
  nothingUnused,
  radiusOfSpeed,
  straightOf,
} from "#physics";

type Facts = Partial<CornerFacts> & { readonly of?: Partial<CornerFacts["corner"]> };
const facts = ({ of = {}, ...rest }: Facts = {}): CornerFacts => ({
  corner: { number: 5, ...of },
  car: {},
  before: {},
  ...rest,
});
const lineOf = (corner: Parameters<typeof cornerLine>[0]) => {
  const line = cornerLine(corner);
  if (!line.known) throw new Error(JSON.stringify(line.reason));
  return line.value;
};

describe("a corner of which little is known", () => {
  test("of a number alone all is assumed, and it is a middling bend before a middling straight", () => {
    const found = assumedCorner(facts());
    expect(found.assumed).toEqual([
      "bend",
      "radius",
      "width",
      "angle",
      "after",
      "before",
      "grip",
      "car width",
      "braking",
      "drive",
      "top speed",
    ]);
    expect(found).toEqual({
      ...assumedCorner(facts({ of: { bend: "middling", after: "middling" }, before: { after: "middling" } })),
      assumed: found.assumed,
    });
    expect(found.isTooSlow).toBe(false);
  });

  test("every kind of bend and straight, in every scenario, gives a corner whose sums can be done", () => {
    const steps = ["low", "mid", "high"] as const;
    for (const bend of bends)
      for (const after of straights)
        for (const before of straights)
          for (const grip of steps)
            for (const width of steps) {
              const { corner } = assumedCorner(facts({ of: { bend, after }, before: { after: before } }), {
                grip,
                width,
              });
              expect(cornerLine({ ...corner, unused: { entry: 1, apex: 0.5, exit: 1 } }).known).toBe(true);
            }
  });

  test("a tighter bend is slower, a longer straight is longer", () => {
    const speeds = bends.map((bend) => {
      const { corner } = assumedCorner(facts({ of: { bend } }));
      return lineOf({ ...corner, unused: nothingUnused }).widestSpeed;
    });
    expect(speeds).toEqual(speeds.toSorted((a, b) => a - b));
    const lengths = straights.map((after) => assumedCorner(facts({ of: { after } })).corner.exitLength);
    expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
    expect(lengths[0]).toBe(0);
  });

  test("inside a chain there is no straight, before or after", () => {
    const { corner } = assumedCorner(
      facts({ of: { after: "none", afterLength: 40 }, before: { after: "none" } }),
    );
    expect([corner.approachLength, corner.exitLength]).toEqual([0, 0]);
    expect(straightOf("short", 77)).toBe(77);
  });

  test("what was measured wins, and is not called assumed", () => {
    const found = assumedCorner(
      facts({
        of: {
          radius: 33,
          width: 12,
          angle: 77,
          afterLength: 210,
          kerbs: { apex: 0.4, exit: 1 },
        },
        car: { width: 2, grip: 1.5, braking: 13, drive: 6, topSpeed: 70 },
        before: { length: 500 },
        lowestSpeed: 10,
      }),
    );
    expect(found.assumed).toEqual([]);
    expect(found.isTooSlow).toBe(false);
    expect(found.corner).toMatchObject({
      innerRadius: 33,
      roadWidth: 12,
      angle: 77,
      exitLength: 210,
      approachLength: 500,
      kerbs: { entry: 0, apex: 0.4, exit: 1 },
      carWidth: 2,
      grip: 1.5,
      braking: 13,
      drive: 6,
      topSpeed: 70,
    });
  });

  test("what the driver said of a corner is not called assumed either", () => {
    const assumed = (known: Partial<Facts>) => assumedCorner(facts(known)).assumed;
    const nothing = assumed({});
    const without = (...said: readonly string[]) => nothing.filter((fact) => !said.includes(fact));
    expect(nothing).toHaveLength(11);
    expect(assumed({ of: { bend: "slow" } })).toEqual(without("bend"));
    expect(assumed({ of: { radius: 30 } })).toEqual(without("radius"));
    expect(assumed({ of: { radius: 30, angle: 80 } })).toEqual(without("bend", "radius", "angle"));
    expect(assumed({ of: { after: "short" } })).toEqual(without("after"));
    expect(assumed({ of: { afterLength: 90 } })).toEqual(without("after"));
    expect(assumed({ before: { after: "short" } })).toEqual(without("before"));
    expect(assumed({ before: { length: 90 } })).toEqual(without("before"));
  });

  test("a car comes at the speed of the widest arc, which the side without a kerb holds", () => {
    const speed = (kerbs: CornerFacts["corner"]["kerbs"]) =>
      assumedCorner(facts({ of: { bend: "slow", ...(kerbs && { kerbs }) } })).corner.approachSpeed;
    expect(speed({ exit: 1 })).toBe(speed(undefined));
    expect(speed({ entry: 1, exit: 1 })).toBeGreaterThan(speed(undefined));
  });

  test("brakes hold what the grip does, in every scenario, where they are not known", () => {
    const braking = (grip: "low" | "high") => {
      const { corner } = assumedCorner(facts(), { grip, width: "mid" });
      return corner.braking / (corner.grip * 9.80665);
    };
    expect(braking("low")).toBeCloseTo(0.9, 9);
    expect(braking("high")).toBeCloseTo(0.9, 9);
  });

  test("what was measured varies little over the scenarios, what is assumed much", () => {
    const spread = (known: Partial<Facts>) => {
      const [low, high] = (["low", "high"] as const).map(
        (step) => assumedCorner(facts(known), { grip: step, width: step }).corner,
      );
      return [(high?.grip ?? 0) / (low?.grip ?? 1), (high?.roadWidth ?? 0) / (low?.roadWidth ?? 1)];
    };
    const [grip = 0, width = 0] = spread({ car: { grip: 1.2 }, of: { width: 11 } });
    expect(grip).toBeCloseTo(1.05 / 0.95, 9);
    expect(width).toBeCloseTo(1.03 / 0.97, 9);
    for (const assumed of spread({})) expect(assumed).toBeGreaterThan(1.4);
  });

  test("a car comes out of the corner before no faster than its top speed", () => {
    const { corner } = assumedCorner(facts({ of: { bend: "kink" }, car: { topSpeed: 30 } }));
    expect(corner.approachSpeed).toBe(30);
  });
});

test("the longer the straight after a corner as assumed, the later its best apex", () => {
  for (const bend of bends) {
    const best = (after: "middling" | "long", kerbs?: { readonly exit: number }) => {
      const { corner } = assumedCorner(facts({ of: { bend, after, ...(kerbs && { kerbs }) } }));
      const times = apexTimes({ ...corner, unused: nothingUnused });
      if (!times.known) throw new Error(JSON.stringify(times.reason));
      return times.value.best.apexAngle;
    };
    expect(best("long")).toBeGreaterThanOrEqual(best("middling"));
    expect(best("long", { exit: 1 })).toBeGreaterThanOrEqual(best("middling", { exit: 1 }));
  }
});

test("inside a chain no line fits the straights, and its best apex has a reason instead", () => {
  const { corner } = assumedCorner(facts({ of: { after: "none" } }));
  expect(apexTimes({ ...corner, unused: nothingUnused })).toEqual({
    known: false,
    reason: { because: "straights too short" },
  });
});

describe("the radius from the lowest speed seen", () => {
  test("is the one whose slower arc, with the gaps of that line, has this speed as its limit", () => {
    const gap = fc.option(fc.double({ min: -0.5, max: 2.5, noNaN: true }), { nil: undefined });
    let [tried, looked] = [0, 0];
    fc.assert(
      fc.property(
        fc.double({ min: 9, max: 60, noNaN: true }),
        fc.record({ entry: gap, apex: gap, exit: gap }),
        fc.constantFrom(undefined, ...bends),
        fc.constantFrom("low", "mid", "high"),
        fc.constantFrom(undefined, { apex: 0.5, exit: 1 }, { entry: 1 }),
        (lowestSpeed, seenOn, bend, step, kerbs) => {
          tried++;
          const of = { ...(bend && { bend }), ...(kerbs && { kerbs }) };
          const scenario = { grip: step, width: step } as const;
          const { corner, isTooSlow } = assumedCorner(facts({ of, lowestSpeed, seenOn }), scenario);
          const left = (metres = 0) => Math.max(0, metres);
          const unused = { entry: left(seenOn.entry), apex: left(seenOn.apex), exit: left(seenOn.exit) };
          const line = lineOf({ ...corner, unused });
          const slower = Math.min(line.entrySpeed, line.exitSpeed);
          if (isTooSlow) {
            expect(slower).toBeGreaterThan(lowestSpeed);
            return;
          }
          looked++;
          expect(slower).toBeCloseTo(lowestSpeed, 6);
        },
      ),
      { seed: 6, numRuns: 400 },
    );
    expect(looked).toBeGreaterThan((3 / 8) * tried);
  });

  test("is that of the line it was seen on, wherever that left road", () => {
    for (const seenOn of [{ entry: 1 }, { apex: 0.5 }, { exit: 1.5 }, { entry: 0.5, apex: 0.2, exit: 1 }]) {
      const { corner } = assumedCorner(facts({ of: { bend: "slow" }, lowestSpeed: 18, seenOn }));
      const line = lineOf({ ...corner, unused: { ...nothingUnused, ...seenOn } });
      expect(Math.min(line.entrySpeed, line.exitSpeed)).toBeCloseTo(18, 6);
    }
  });

  test("is not called assumed, and names no bend where the angle is known", () => {
    expect(assumedCorner(facts({ lowestSpeed: 25 })).assumed.slice(0, 3)).toEqual(["bend", "width", "angle"]);
    expect(assumedCorner(facts({ lowestSpeed: 25, of: { angle: 80 } })).assumed).not.toContain("bend");
  });

  test("tells the bend where nobody said it: the one usually driven at that speed", () => {
    const angle = (kmh: number) => assumedCorner(facts({ lowestSpeed: kmh / 3.6 })).corner.angle;
    const angles = [55, 80, 105, 155, 280].map(angle);
    expect(angles).toEqual(bends.map((bend) => assumedCorner(facts({ of: { bend } })).corner.angle));
    expect(bendTaken(facts({ lowestSpeed: 280 / 3.6 }))).toBe("kink");
    expect(bendTaken(facts({ lowestSpeed: 280 / 3.6, of: { bend: "slow" } }))).toBe("slow");
    expect(bendTaken(facts())).toBe("middling");
  });

  test("a speed too low for the bend leaves the least radius there is, and says so", () => {
    const { corner, isTooSlow } = assumedCorner(facts({ lowestSpeed: 12, of: { bend: "fast" } }));
    expect(isTooSlow).toBe(true);
    expect(corner.innerRadius).toBe(3);
    expect(assumedCorner(facts({ lowestSpeed: 45, of: { bend: "fast" } })).isTooSlow).toBe(false);
    const kerbs = { apex: 1 };
    const beside = assumedCorner(facts({ lowestSpeed: 12, of: { bend: "fast", kerbs } }));
    expect(beside.corner.innerRadius).toBe(4);
  });

  test("is refused for a speed or a grip that is none", () => {
    expect(() => radiusOfSpeed(0, 1)).toThrow(/speed.*more than 0/);
    expect(() => radiusOfSpeed(20, 0)).toThrow(/grip.*more than 0/);
    expect(() => radiusOfSpeed(20, Number.NaN)).toThrow(/grip.*NaN/);
    expect(() => radiusOfSpeed(20, 1, Number.NaN)).toThrow(/banking.*NaN/);
    expect(() => radiusOfSpeed(0, 1, 60)).toThrow(/speed.*more than 0/);
    expect(radiusOfSpeed(20, 1, 60)).toBe(0);
  });
});
