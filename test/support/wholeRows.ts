import type { Lap, PlannedRun, TableName, Tables } from "#domain";

/** An id that tells its number. */
export const idAt = (n: number) => `00000000-0000-7000-8000-${String(n).padStart(12, "0")}`;

const stamps = (n: number) => ({
  id: idAt(n),
  createdAt: 1_770_000_000_000,
  updatedAt: 1_770_000_500_000,
  deletedAt: 1_770_000_500_000,
  had: [1_770_000_100_000],
  disproved: [1_770_000_900_000],
});
const at = Date.UTC(2026, 2, 10, 18);
const on = "2026-03-10";

/** A lap with every field a lap can have. */
export const wholeLap: Lap = {
  ...stamps(90),
  n: 3.5,
  ms: 83_456,
  decimals: 3,
  sectors: [27_100, 31_456, 24_900],
  sectorDecimals: [1, 3, 2],
  source: "typed",
  remarks: [{ kind: "off", corner: 5 }],
  note: "late",
  isNotBest: true,
  isOdd: true,
};

/** A line of a plan with every field a line can have. */
const wholeLine: PlannedRun = {
  id: idAt(91),
  purpose: "warm up",
  laps: 5,
  kind: "drill",
  effort: "easy",
  attendTo: "turn-in",
  goodWhen: "no lock",
  reason: "4 of 20 exits spun",
  rule: "drill",
  corner: 5,
  sector: 2,
  check: { figure: "drill", value: 800 },
  drill: "traction",
  rigTest: idAt(13),
  skipped: true,
};

/** A row of every table with every field it can have; what they name is among them. */
export const wholeRows: { readonly [T in TableName]: Tables[T] } = {
  preferences: {
    ...stamps(1),
    displayDecimals: 2,
    relativeTo: "pb",
    dayStartsAt: 4,
    settlingLaps: 1,
    marginPercent: 0.5,
  },
  cars: {
    ...stamps(2),
    name: "Club hatch",
    width: 1.75,
    grip: 1.25,
    braking: 10.5,
    drive: 3.5,
    topSpeed: 55,
  },
  tracks: { ...stamps(3), name: "Varnholt Ring" },
  layouts: {
    ...stamps(4),
    trackId: idAt(3),
    name: "Short",
    sectors: 3,
    length: 2740,
    corners: [
      {
        number: 5,
        name: "Mill",
        direction: "left",
        bend: "slow",
        after: "long",
        afterLength: 450,
        sector: 2,
        radius: 38.5,
        width: 12,
        angle: 90,
        kerbs: { entry: 0.5, apex: 1, exit: 1.5 },
      },
    ],
  },
  combos: {
    ...stamps(5),
    carId: idAt(2),
    layoutId: idAt(4),
    lowestSpeeds: [{ number: 5, speed: 22.5 }],
    practice: { sessionsAWeek: 2.5, lapsASession: 24 },
  },
  pages: { ...stamps(6), comboId: idAt(5), from: at, reason: "new surface" },
  references: { ...stamps(7), comboId: idAt(5), ms: 82_000, decimals: 1, source: "a friend" },
  sessions: {
    ...stamps(8),
    comboId: idAt(5),
    startedAt: at,
    isTimeOfDayKnown: true,
    date: on,
    zone: "Europe/Berlin",
    endedAt: at + 3_600_000,
    focus: "braking",
    note: "brake earlier",
    conditions: "cool",
    targetMs: 82_500,
    plan: [wholeLine],
  },
  runs: {
    ...stamps(9),
    sessionId: idAt(8),
    comboId: idAt(5),
    n: 1,
    startedAt: at,
    endedAt: at + 1_800_000,
    kind: "race",
    effort: "full",
    surface: "damp",
    rigId: idAt(10),
    rigTest: { id: idAt(13), pair: 1, side: "B", void: "phone rang" },
    line: idAt(91),
    counts: [{ drill: "traction", corner: 5, tries: 10, good: 7 }],
    tyres: "soft",
    fuelLitres: 12.5,
    setup: "stiff",
    assists: "none",
    guest: "a guest",
    summary: {
      laps: 9,
      bestMs: 83_100,
      bestDecimals: 1,
      usualMs: 84_000,
      usualDecimals: 0,
      off: 1,
      isOdd: true,
    },
    lapsDriven: 12,
    gridPlace: 4,
    finishPlace: 2,
    note: "close",
    laps: [wholeLap],
  },
  rigs: {
    ...stamps(10),
    from: on,
    name: "near",
    screen: {
      kind: "three",
      width: 0.6,
      height: 0.34,
      eyeDistance: 0.7,
      radius: 1,
      bezel: 0.01,
      sideAngle: 60,
      pixelsAcross: 2560,
    },
    view: { degrees: 52, axis: "vertical", note: "as built" },
    wheel: {
      name: "belt",
      torque: 8,
      gainPercent: 65,
      damping: -2,
      rotation: 900,
      rimRadius: 0.15,
      note: "round",
    },
    pedals: {
      name: "load cell",
      brakeForceKg: 60,
      loadCellKg: 90,
      brakeDeadZone: 2,
      throttleDeadZone: 1,
      curve: "straight",
      note: "hard",
    },
    seat: { height: 0.25, eyeHeight: 0.95, note: "low" },
    note: "in the attic",
  },
  targets: {
    ...stamps(11),
    comboId: idAt(5),
    kind: "meanOf",
    value: 83_000,
    laps: 5,
    by: "2026-04-30",
    setAt: at,
    setOn: on,
    start: 84_000,
    process: "brake later for corner 5",
    why: "the league's qualifying time",
    note: "easier in the cool",
    earlier: [{ kind: "best", value: 83_500, laps: 3, by: "2026-03-31", until: at, untilDay: on }],
    archivedAt: at,
  },
  forecasts: {
    ...stamps(12),
    targetId: idAt(11),
    comboId: idAt(5),
    madeOn: on,
    by: "2026-04-30",
    chance: 0.4,
    method: "curve 1",
    madeAfter: idAt(8),
    kind: "meanOf",
    value: 83_000,
    laps: 5,
    sessions: 9,
    lapsASession: 24,
    reached: true,
    scoredOn: "2026-05-01",
  },
  rigTests: {
    ...stamps(13),
    comboId: idAt(5),
    question: "Is far better?",
    sayA: "eye to screen 60 cm",
    sayB: "eye to screen 70 cm",
    field: "screen.eyeDistance",
    valueA: 0.6,
    valueB: 0.7,
    figure: "scatter",
    smallestMs: 200,
    spreadMs: 350,
    lapsARun: 6,
    kept: "B",
    rigA: idAt(10),
    rigB: idAt(10),
    pairsPlanned: 6,
    level: 0.9,
    seed: 7,
    pairs: [{ first: "B", runA: idAt(9), runB: idAt(9) }],
    endedAt: at,
  },
  cornerReviews: {
    ...stamps(14),
    comboId: idAt(5),
    sessionId: idAt(8),
    lapId: idAt(90),
    on,
    corners: [
      {
        number: 5,
        entry: 0.5,
        apex: 1.25,
        exit: -0.25,
        braking: "early",
        throttle: "twice",
        isOffLine: true,
        note: "wide",
      },
    ],
  },
  plans: { ...stamps(15), comboId: idAt(5), name: "short evening", minutes: 45, lines: [wholeLine] },
};

/** What stands for a field that is not there. */
export const absent = Symbol("absent");

/**
 * A copy of a row in which one field holds something else.
 * @param path names and places from the outside in: "corners.0.radius"
 * @param value `absent` takes the field out
 */
export function withAt<R extends object>(row: R, path: string, value: unknown): R {
  const copy = structuredClone(row);
  const names = path.split(".");
  const last = names.pop() ?? "";
  let holder = copy as Record<string, unknown>;
  for (const name of names) holder = holder[name] as Record<string, unknown>;
  if (value === absent) Reflect.deleteProperty(holder, last);
  else holder[last] = value;
  return copy;
}
