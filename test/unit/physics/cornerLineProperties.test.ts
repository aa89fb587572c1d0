import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apexTimes, type Corner, cornerLine, nothingUnused, shorterWay } from "#physics";

const gravity = 9.80665;
const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const radians = (degrees: number) => (degrees * Math.PI) / 180;

const lineOf = (corner: Corner) => {
  const line = cornerLine(corner);
  if (!line.known) throw new Error(JSON.stringify(line.reason));
  return line.value;
};

describe("the widest arc", () => {
  /**
   * Whether an arc from the heading of one straight to that of the other keeps the car's inner side between the edges.
   * Walked in 241 points; told by the distance from the bend's centre, beside the straights from the line through it.
   */
  function staysInside(
    [cx, cy]: readonly [number, number],
    radius: number,
    { angle, inner, outer }: { readonly angle: number; readonly inner: number; readonly outer: number },
  ): boolean {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    for (let step = 0; step <= 240; step++) {
      const heading = (angle * step) / 240;
      const [x, y] = [cx + radius * Math.sin(heading), cy - radius * Math.cos(heading)];
      const isBefore = x < 0 && heading <= angle / 2;
      const isAfter = x * cos + y * sin > 0 && heading >= angle / 2;
      const out = isBefore ? -y : isAfter ? x * sin - y * cos : Math.hypot(x, y);
      if (out < inner || out > outer) return false;
    }
    return true;
  }

  test("is r + W/(1 − cos 45°) at 90°, and no arc that stays inside the road is wider", () => {
    // 40,000 arcs a corner: their centres anywhere about the bisector, their radii up to half as wide again.
    for (const degrees of [30, 60, 90, 120, 150]) {
      const [inner, room, angle] = [25, 10, radians(degrees)];
      const formula = lineOf({
        ...braked,
        innerRadius: inner,
        roadWidth: room + 1.8,
        angle: degrees,
      }).widestRadius;
      if (degrees === 90) expect(formula).toBeCloseTo(25 + 10 / (1 - Math.SQRT1_2), 9);
      let widest = 0;
      const draw = drawsFrom(degrees);
      for (let tried = 0; tried < 40_000; tried++) {
        const radius = formula * (0.7 + 0.8 * draw());
        const back = (radius - inner) * (0.9 + 0.2 * draw());
        const aside = (draw() - 0.5) * room;
        const [ux, uy] = [-Math.sin(angle / 2), Math.cos(angle / 2)];
        const centre = [back * ux + aside * uy, back * uy - aside * ux] as const;
        if (staysInside(centre, radius, { angle, inner, outer: inner + room }))
          widest = Math.max(widest, radius);
      }
      expect(widest).toBeLessThanOrEqual(formula + 1e-9);
      expect(widest).toBeGreaterThan(0.93 * formula);
    }
  });

  test("with kerbs begins further out and cuts further in", () => {
    const kerbs = { entry: 1, apex: 0.5, exit: 1 };
    const line = lineOf({ ...braked, kerbs });
    // r − 0.5 inside, 10 + 0.5 + 1 m beside the car.
    expect(line.widestRadius).toBeCloseTo(24.5 + 11.5 / (1 - Math.SQRT1_2), 9);
    const uneven = lineOf({ ...braked, kerbs: { entry: 0, apex: 0, exit: 2 } });
    expect(uneven.entryRadius).toBeCloseTo(25 + 10 / (1 - Math.SQRT1_2), 9);
    expect(uneven.exitRadius).toBeCloseTo(25 + 12 / (1 - Math.SQRT1_2), 9);
    expect(uneven.widestRadius).toBe(uneven.entryRadius);
    expect(uneven.seconds).toBe(0);
  });

  test("a kerb left alone is road left unused", () => {
    const kerbs = { entry: 1, apex: 0.5, exit: 1 };
    const without = lineOf({ ...braked, unused: nothingUnused });
    // Nothing of the kerbs used: as far from their edges as the kerbs are wide.
    const alone = lineOf({ ...braked, kerbs, unused: { entry: 1, apex: 0.5, exit: 1 } });
    expect(alone.entryRadius).toBeCloseTo(without.entryRadius, 9);
    expect(alone.exitRadius).toBeCloseTo(without.exitRadius, 9);
    expect(alone.seconds).toBeGreaterThan(0);
  });

  test("kerbs that cannot be are refused with the reason", () => {
    const reason = (kerbs: Corner["kerbs"], unused = nothingUnused as Corner["unused"]) => {
      const line = cornerLine({ ...braked, ...(kerbs && { kerbs }), unused });
      return line.known ? undefined : line.reason;
    };
    expect(reason({ entry: -0.1, apex: 0, exit: 0 })).toEqual({
      because: "below zero",
      measure: "kerb at entry",
      value: -0.1,
    });
    expect(reason({ entry: 0, apex: 25, exit: 0 })).toEqual({
      because: "out of range",
      measure: "kerb at the apex",
      from: 0,
      to: 25,
      value: 25,
    });
    expect(() => cornerLine({ ...braked, kerbs: { entry: Number.NaN, apex: 0, exit: 0 } })).toThrow(
      /kerb at entry.*NaN/,
    );
    const entry = { entry: 10.5, apex: 0, exit: 0 };
    expect(reason(undefined, entry)).toEqual({
      because: "more unused than there is",
      unused: 10.5,
      room: 10,
    });
    expect(reason({ entry: 0.5, apex: 0, exit: 0 }, entry)).toBeUndefined();
    expect(reason({ entry: 0, apex: 0, exit: 5 }, entry)).toMatchObject({ unused: 10.5, room: 10 });
  });

  test("of two sides with more unused than there is, the one further over is told", () => {
    const told = (unused: Corner["unused"]) => {
      const line = cornerLine({ ...braked, kerbs: { entry: 0, apex: 0, exit: 5 }, unused });
      return line.known ? undefined : line.reason;
    };
    expect(told({ entry: 11, apex: 0, exit: 17 })).toMatchObject({ unused: 17, room: 15 });
    expect(told({ entry: 13, apex: 0, exit: 16 })).toMatchObject({ unused: 13, room: 10 });
  });

  test("a value that is no number is no corner, whichever it is", () => {
    for (const [field, said] of [
      ["angle", /angle/],
      ["apexAngle", /apex angle/],
      ["topSpeed", /top speed/],
      ["innerRadius", /inner radius/],
      ["exitLength", /exit length/],
    ] as const)
      expect(() => cornerLine({ ...braked, [field]: Number.NaN }), field).toThrow(said);
    const upright = cornerLine({ ...braked, banking: 90 });
    expect(upright).toMatchObject({ reason: { because: "out of range", measure: "banking", value: 90 } });
  });
});

/** A corner that any of these cars has to brake for. */
const braked: Corner = {
  innerRadius: 25,
  roadWidth: 11.8,
  carWidth: 1.8,
  angle: 90,
  unused: nothingUnused,
  grip: 1.2,
  braking: 9,
  drive: 4,
  approachLength: 200,
  approachSpeed: 50,
  exitLength: 300,
};

/** Even draws from 0 to 1 (Lehmer's generator, multiplier 48271). */
function drawsFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

const anyCorner = fc
  .record({
    innerRadius: range(4, 200),
    room: range(2, 14),
    angle: range(10, 120),
    grip: range(0.7, 2.5),
    brakingShare: range(0.4, 1),
    driveShare: range(0.05, 1),
    approachLength: range(0, 600),
    approachSpeed: range(8, 60),
    exitLength: range(100, 700),
    shares: fc.tuple(range(0, 0.45), range(0, 0.4), range(0, 0.45)),
  })
  .map(({ room, brakingShare, driveShare, shares: [entry, apex, exit], ...rest }): Corner => {
    const held = rest.grip * gravity;
    return {
      ...rest,
      roadWidth: room + 1.8,
      carWidth: 1.8,
      braking: brakingShare * held,
      drive: driveShare * held,
      topSpeed: 80,
      unused: { entry: entry * room, apex: apex * room, exit: exit * room },
    };
  });

describe("the loss", () => {
  test("is zero with nothing unused, whatever the corner", () => {
    fc.assert(
      fc.property(anyCorner, (corner) => {
        const line = lineOf({ ...corner, unused: nothingUnused });
        expect(line.seconds).toBe(0);
        expect(line.nothingToGain).toBe(true);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  test("matches a step by step integration of the same motion to a millisecond", () => {
    fc.assert(
      fc.property(anyCorner, (corner) => {
        const { seconds } = lineOf(corner);
        const walked = walkedLoss(corner);
        expect(Math.abs(seconds - walked)).toBeLessThan(0.001);
      }),
      { seed: 2, numRuns: 40 },
    );
  });

  test("grows with each metre unused at apex or exit, where the grip bounds the speed there", () => {
    // Up to 120°, 100 m or more of straight after it, any drive that the tyres hold. It does where the car must brake for
    // the corner and no more is unused at entry than at exit, so that it is at the limit when it begins to turn out.
    fc.assert(
      fc.property(anyCorner, fc.constantFrom("apex", "exit"), range(0.05, 1), (drawn, place, more) => {
        const { entry, apex, exit } = drawn.unused;
        const corner = { ...drawn, unused: { entry, apex, exit: Math.max(entry, exit) } };
        const unused = { ...corner.unused, [place]: corner.unused[place] + more };
        const less = { ...corner, unused };
        fc.pre(mustBrake(corner) && cornerLine(less).known);
        expect(lineOf(less).seconds).toBeGreaterThan(lineOf(corner).seconds);
      }),
      { seed: 3, numRuns: 650 },
    );
  });

  test("may fall by a millisecond where the car comes out of a far tighter entry and never reaches the exit's limit", () => {
    const corner = { ...braked, innerRadius: 18, roadWidth: 17.5, grip: 2.9, braking: 15, drive: 0.6 };
    const left = (exit: number) =>
      lineOf({ ...corner, approachLength: 410, exitLength: 168, unused: { entry: 6, apex: 5.8, exit } })
        .seconds;
    expect(left(0.85)).toBeLessThan(left(0.8));
    expect(left(0.85)).toBeGreaterThan(left(0.8) - 0.001);
  });

  test("of a corner taken flat out falls with what is unused: there the shorter way wins", () => {
    const flat = { ...braked, innerRadius: 300, approachSpeed: 45, topSpeed: 45, unused: nothingUnused };
    const left = lineOf({ ...flat, unused: { entry: 1, apex: 0, exit: 1 } });
    expect(left.seconds).toBeLessThan(0);
    expect(left.nothingToGain).toBe(true);
  });
});

/** Whether a car comes to the corner faster than its widest arc allows. */
function mustBrake(corner: Corner): boolean {
  const { widestSpeed, widestRadius, lengthened } = lineOf({ ...corner, unused: nothingUnused });
  const reach = (widestRadius - corner.innerRadius) * Math.sin(radians(corner.angle / 2));
  const straight = Math.max(0, corner.approachLength + lengthened.approach - reach);
  const arrives = Math.sqrt(corner.approachSpeed ** 2 + 2 * corner.drive * straight);
  return Math.min(arrives, corner.topSpeed ?? Number.POSITIVE_INFINITY) > widestSpeed;
}

/**
 * The same motion in small steps, on the ways as our methods, §9, give them: radii from the formula, both ways between the
 * same two points. Speeds by Euler steps of even acceleration, forward and back.
 */
function walkedLoss(corner: Corner): number {
  const { innerRadius, roadWidth, carWidth, angle, grip, unused } = corner;
  const [room, half] = [roadWidth - carWidth, radians(angle / 2)];
  const ways = [unused, nothingUnused].map(({ entry, apex, exit }) => {
    const arc = (left: number) => {
      const wider = (room - apex - left) / (1 - Math.cos(half));
      const radius = innerRadius + apex + wider;
      return {
        reach: wider * Math.sin(half),
        length: (radius + carWidth / 2) * half,
        limit: grip * gravity * radius,
      };
    };
    return { entry: arc(entry), exit: arc(exit) };
  });
  // Both over the straights that the sums lengthened them to: what they are is tested by itself.
  const { lengthened } = lineOf(corner);
  const times = ways.map(({ entry, exit }) =>
    walked(
      [
        {
          length: corner.approachLength + lengthened.approach - entry.reach,
          limit: Number.POSITIVE_INFINITY,
        },
        entry,
        exit,
        { length: corner.exitLength + lengthened.exit - exit.reach, limit: Number.POSITIVE_INFINITY },
      ],
      corner,
    ),
  );
  return (times[0] ?? Number.NaN) - (times[1] ?? Number.NaN);
}

function walked(way: readonly { readonly length: number; readonly limit: number }[], corner: Corner): number {
  const steps = 20_000;
  const cells = way.flatMap(({ length, limit }) =>
    length > 0 ? Array.from({ length: steps }, () => ({ ds: length / steps, limit })) : [],
  );
  const left = (squared: number, limit: number) =>
    limit === Number.POSITIVE_INFINITY ? 1 : Math.sqrt(Math.max(0, 1 - (squared / limit) ** 2));
  const allowed = new Array<number>(cells.length + 1).fill(Number.POSITIVE_INFINITY);
  for (let at = cells.length - 1; at >= 0; at--) {
    const { ds, limit } = cells[at] as (typeof cells)[number];
    const end = Math.min(allowed[at + 1] as number, limit);
    // In the middle of the step the friction circle leaves less than at its end (midpoint rule).
    const middle = Math.min(limit, end + corner.braking * left(end, limit) * ds);
    allowed[at] =
      end === Number.POSITIVE_INFINITY
        ? end
        : Math.min(limit, end + 2 * corner.braking * left(middle, limit) * ds);
  }
  const cap = (corner.topSpeed ?? Number.POSITIVE_INFINITY) ** 2;
  let squared = Math.min(corner.approachSpeed ** 2, allowed[0] as number, cap);
  let seconds = 0;
  cells.forEach(({ ds, limit }, at) => {
    const start = Math.min(squared, limit);
    const middle = Math.min(limit, start + corner.drive * left(start, limit) * ds);
    const driven = start + 2 * corner.drive * left(middle, limit) * ds;
    const next = Math.min(driven, limit, allowed[at + 1] as number, cap);
    seconds += (2 * ds) / (Math.sqrt(start) + Math.sqrt(next));
    squared = next;
  });
  return seconds;
}

describe("the shorter way", () => {
  const hairpin = { ...braked, innerRadius: 8, roadWidth: 12, angle: 180, grip: 1.2, approachSpeed: 10 };
  const shorter = (changes: Partial<Corner>) => {
    const way = shorterWay({ ...hairpin, ...changes });
    if (!way.known) throw new Error(JSON.stringify(way.reason));
    return way.value;
  };

  test("wins in a hairpin between short straights, and not before a straight worth its name", () => {
    const short = { approachLength: 0, exitLength: 0, drive: 2 };
    expect(shorter(short).wins).toBe(true);
    expect(shorter(short).seconds).toBeLessThan(-0.05);
    expect(shorter({ approachLength: 80, exitLength: 80, drive: 4 }).wins).toBe(false);
    expect(shorter({ approachLength: 300, exitLength: 400, approachSpeed: 30, drive: 4 }).wins).toBe(false);
  });

  test("wins where a corner is taken flat out", () => {
    const flat = shorter({ innerRadius: 300, angle: 60, approachSpeed: 45, topSpeed: 45 });
    expect(flat.wins).toBe(true);
    expect(flat.unused.entry).toBeCloseTo(12 - 1.8, 9);
  });

  test("is timed as the line that leaves as much unused", () => {
    const { seconds, unused } = shorter({ approachLength: 0, exitLength: 0, drive: 2 });
    const line = lineOf({ ...hairpin, approachLength: 0, exitLength: 0, drive: 2, unused });
    expect(line.seconds).toBe(seconds);
  });

  test("bad geometry is refused with the reason", () => {
    expect(shorterWay({ ...hairpin, roadWidth: 1 })).toMatchObject({
      reason: { because: "car wider than the road" },
    });
  });
});

test("a kerb at the exit makes the best line through a corner faster, and is used", () => {
  const best = (kerbs: Corner["kerbs"]) => {
    const times = apexTimes({ ...braked, approachLength: 400, exitLength: 400, ...(kerbs && { kerbs }) });
    if (!times.known) throw new Error(JSON.stringify(times.reason));
    return times.value.best;
  };
  expect(best({ entry: 0, apex: 0, exit: 2 }).seconds).toBeLessThan(best(undefined).seconds - 0.05);
});
