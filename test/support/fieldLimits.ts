import type { TableName } from "#domain";
import { absent, wholeRows } from "./wholeRows.ts";

/** What a field takes, and what it refuses with the words for it. */
export interface FieldLimits {
  readonly takes: readonly unknown[];
  readonly refuses: readonly (readonly [unknown, string])[];
}

/** A field that may be absent. */
const may = ({ takes, refuses }: FieldLimits): FieldLimits => ({
  takes: [...takes, absent],
  refuses: refuses.filter(([value]) => value !== absent),
});
const missing = [absent, "missing"] as const;

const text = (most: number): FieldLimits => ({
  takes: ["", "é ÷ 走", "x".repeat(most)],
  refuses: [
    missing,
    [7, "not a text"],
    [null, "not a text"],
    [["x"], "not a text"],
    ["x".repeat(most + 1), `longer than ${most}`],
  ],
});
const name = text(400);
const note = text(20_000);

const number = (least: number, most: number): FieldLimits => ({
  takes: [least, most, (least + most) / 2],
  refuses: [
    missing,
    ["7", "not a number"],
    [null, "not a number"],
    [Number.NaN, "not a number"],
    [Number.POSITIVE_INFINITY, "not a number"],
    [least - 0.001, `below ${least}`],
    [most + 0.001, `above ${most}`],
  ],
});
const whole = (least: number, most: number): FieldLimits => ({
  takes: [least, most],
  refuses: [
    missing,
    ["7", "not a number"],
    [null, "not a number"],
    [least + 0.5, "not a whole number"],
    [least - 1, `below ${least}`],
    [most + 1, `above ${most}`],
  ],
});
/** A number without ends of its own. */
const anyNumber: FieldLimits = {
  takes: [],
  refuses: [missing, ["7", "not a number"], [Number.NEGATIVE_INFINITY, "not a number"]],
};

const oneOf = (...words: readonly (string | number)[]): FieldLimits => ({
  takes: words,
  refuses: [
    missing,
    ["other", `none of these: ${words.join(", ")}`],
    [null, `none of these: ${words.join(", ")}`],
    [7, `none of these: ${words.join(", ")}`],
  ],
});
const trueOrNothing: FieldLimits = {
  takes: [true, absent],
  refuses: [
    [false, "none of these: true"],
    ["true", "none of these: true"],
  ],
};
const yesOrNo: FieldLimits = {
  takes: [true, false],
  refuses: [missing, [0, "not true or false"], ["true", "not true or false"]],
};

const id: FieldLimits = {
  takes: ["01234567-89ab-7cde-8f01-23456789abcd", "00000000-0000-0000-0000-000000000000"],
  refuses: [
    missing,
    [7, "not a text"],
    ["", "not an id"],
    ["01234567-89AB-7cde-8f01-23456789abcd", "not an id"],
    ["x01234567-89ab-7cde-8f01-23456789abcd", "not an id"],
    ["01234567-89ab-7cde-8f01-23456789abcde", "not an id"],
    ["01234567-89ab-7cde-23456789abcd", "not an id"],
    ["0123456-789ab-7cde-8f01-23456789abcd", "not an id"],
    ["01234567-89ab-7cde-8f0-123456789abcd", "not an id"],
    ["01234567-89ab-7cde-8f01-23456789abc", "not an id"],
  ],
};
const date: FieldLimits = {
  takes: ["1970-01-01", "2024-02-29", "2199-12-31"],
  refuses: [
    missing,
    [20_260_310, "not a text"],
    ["2026-3-10", "not a date like 2026-10-14"],
    ["on 2026-03-10", "not a date like 2026-10-14"],
    ["2026-03-10T18:00", "not a date like 2026-10-14"],
    ["2026-02-29", "no such day"],
    ["1969-12-31", "not from 1970-01-01 to 2199-12-31"],
    ["2200-01-01", "not from 1970-01-01 to 2199-12-31"],
  ],
};
const zone: FieldLimits = {
  takes: ["UTC", "Europe/Berlin", "+05:45"],
  refuses: [
    missing,
    [1, "not a text"],
    ["", "not the name of a time zone"],
    ["Europe / Berlin", "not the name of a time zone"],
  ],
};
/** A day before 1970 began in UTC, to two days after 2199 did: noon of a date lies within a day of it, whatever the zone. */
const instant = whole(Date.UTC(1969, 11, 31), Date.UTC(2200, 0, 2));
const stamp = whole(0, Date.UTC(2200, 0, 2));
const lapTime = whole(100, 86_400_000);
const decimals = whole(0, 3);
const laps = whole(0, 9999);
const cornerNumber = whole(1, 999);
const place = number(-1e6, 1e6);
const share = number(0, 1);
const effort = oneOf("easy", "learning", "brisk", "full");
const runKind = oneOf("warm-up", "drill", "pace", "race");
const drill = oneOf("traction", "braking", "half throttle", "kerb");
/** Figures of a target, as they are now and were before. */
const targetKind: FieldLimits = {
  takes: ["best", "median", "meanOf"],
  refuses: oneOf("best", "median", "meanOf", "scatter", "cleanShare").refuses,
};
const targetValue: FieldLimits = {
  takes: [100, 83_456.5, 86_400_000],
  refuses: [...anyNumber.refuses, [-1, "below 0"]],
};

/** A list of one of these or more. */
const list = (entry: unknown, most: number): FieldLimits => ({
  takes: [[], Array.from({ length: most }, () => entry)],
  refuses: [
    missing,
    [null, "not a list"],
    [{ length: 1 }, "not a list"],
    ["x", "not a list"],
    [Array.from({ length: most + 1 }, () => entry), `longer than ${most}`],
  ],
});
/** A part made of fields, all of which may be absent. */
const part: FieldLimits = {
  takes: [{}, { newer: 1 }],
  refuses: [missing, [null, "not made of fields"], ["x", "not made of fields"], [3, "not made of fields"]],
};

const stamped = {
  id,
  createdAt: stamp,
  updatedAt: stamp,
  deletedAt: may(stamp),
  had: may(list(5, 1000)),
  "had.0": stamp,
  disproved: may(list(5, 1000)),
  "disproved.0": stamp,
};

/** Of a lap, by its path in a run. Sectors that fit to the time are tried by themselves below. */
const lapFields = Object.fromEntries(
  Object.entries({
    ...stamped,
    n: place,
    ms: { takes: [], refuses: lapTime.refuses.slice(1) },
    decimals: { takes: [0, 3], refuses: decimals.refuses.slice(1) },
    sectors: { takes: [], refuses: may(list(1, 99)).refuses },
    "sectors.0": { takes: [], refuses: whole(1, 86_400_000).refuses.slice(1) },
    sectorDecimals: { takes: [absent], refuses: list(1, 99).refuses.slice(1) },
    "sectorDecimals.0": { takes: [0, 3], refuses: decimals.refuses.slice(1) },
    source: oneOf("typed", "memory", "imported"),
    remarks: list({ kind: "cut" }, 50),
    "remarks.0": { takes: [], refuses: [[null, "not made of fields"]] },
    "remarks.0.kind": oneOf("out", "in", "cut", "off", "spin", "contact", "traffic", "slow"),
    "remarks.0.corner": may(cornerNumber),
    note: may(note),
    isNotBest: trueOrNothing,
    isOdd: trueOrNothing,
  } as Readonly<Record<string, FieldLimits>>).map(([field, limits]) => [`laps.0.${field}`, limits]),
);

/** Of a line of a plan, by its path in the row that holds it. */
const planLines = (at: string) =>
  Object.fromEntries(
    Object.entries({
      "": { takes: [{ purpose: "" }], refuses: [[null, "not made of fields"]] },
      ".id": may(id),
      ".purpose": note,
      ".laps": may(laps),
      ".kind": may(runKind),
      ".effort": may(effort),
      ".attendTo": may(note),
      ".goodWhen": may(note),
      ".reason": may(note),
      ".rule": may(name),
      ".corner": may(cornerNumber),
      ".sector": may(whole(1, 99)),
      ".check": may({ takes: [{ figure: "driven" }], refuses: part.refuses }),
      ".check.figure": oneOf("clean", "usual", "best", "scatter", "corner", "sector", "drill", "driven"),
      ".check.value": may({ takes: [0, 83_456.5], refuses: [...anyNumber.refuses, [-1, "below 0"]] }),
      ".drill": may(drill),
      ".rigTest": may(id),
      ".skipped": trueOrNothing,
    } as Readonly<Record<string, FieldLimits>>).map(([field, limits]) => [`${at}.0${field}`, limits]),
  );

/** What each field of a whole row takes, up to the ends of its range, and what it does not, by its path in the row. */
export const fieldLimits: { readonly [T in TableName]: Readonly<Record<string, FieldLimits>> } = {
  preferences: {
    ...stamped,
    id: {
      takes: ["00000000-0000-7000-8000-000000000001"],
      refuses: [["00000000-0000-7000-8000-000000000002", "not the id of preferences"], missing],
    },
    displayDecimals: oneOf(1, 2, 3),
    relativeTo: oneOf("lap", "pb", "target"),
    dayStartsAt: whole(0, 23),
    settlingLaps: oneOf(0, 1, 2, 3),
    marginPercent: number(0, 100),
  },
  cars: {
    ...stamped,
    name,
    width: may(number(0.5, 4)),
    grip: may(number(0.1, 6)),
    braking: may(number(1, 70)),
    drive: may(number(0.2, 40)),
    topSpeed: may(number(5, 200)),
  },
  tracks: { ...stamped, name },
  layouts: {
    ...stamped,
    trackId: id,
    name,
    sectors: may(whole(1, 99)),
    length: may(number(50, 100_000)),
    corners: list({ number: 1 }, 999),
    "corners.0": { takes: [{ number: 1 }], refuses: [[null, "not made of fields"]] },
    "corners.0.number": cornerNumber,
    "corners.0.name": may(name),
    "corners.0.direction": may(oneOf("left", "right")),
    "corners.0.radius": may(number(1, 2000)),
    "corners.0.width": may(number(1, 100)),
    "corners.0.angle": may(number(1, 360)),
    "corners.0.bend": may(oneOf("hairpin", "slow", "middling", "fast", "kink")),
    "corners.0.after": may(oneOf("none", "short", "middling", "long")),
    "corners.0.afterLength": may(number(0, 10_000)),
    "corners.0.sector": may(whole(1, 99)),
    "corners.0.kerbs": may(part),
    "corners.0.kerbs.entry": may(number(0, 20)),
    "corners.0.kerbs.apex": may(number(0, 20)),
    "corners.0.kerbs.exit": may(number(0, 20)),
  },
  combos: {
    ...stamped,
    carId: id,
    layoutId: id,
    lowestSpeeds: may(list({ number: 1, speed: 20 }, 999)),
    "lowestSpeeds.0": { takes: [{ number: 1, speed: 20 }], refuses: [[null, "not made of fields"]] },
    "lowestSpeeds.0.number": cornerNumber,
    "lowestSpeeds.0.speed": number(1, 150),
    practice: may(part),
    "practice.sessionsAWeek": may(number(0.1, 21)),
    "practice.lapsASession": may(number(1, 999)),
  },
  pages: { ...stamped, comboId: id, from: instant, reason: note },
  references: { ...stamped, comboId: id, ms: lapTime, decimals, source: note },
  sessions: {
    ...stamped,
    comboId: id,
    startedAt: instant,
    isTimeOfDayKnown: yesOrNo,
    date,
    zone,
    endedAt: may(instant),
    focus: oneOf(
      "free",
      "line",
      "kerbs",
      "braking",
      "throttle",
      "traction",
      "steadiness",
      "race pace",
      "rig",
    ),
    note,
    conditions: may(note),
    targetMs: may(lapTime),
    plan: may(list({ purpose: "" }, 50)),
    ...planLines("plan"),
  },
  runs: {
    ...stamped,
    sessionId: id,
    comboId: id,
    n: place,
    startedAt: instant,
    endedAt: may(instant),
    kind: runKind,
    effort,
    surface: oneOf("dry", "damp", "wet"),
    rigId: may(id),
    rigTest: may({ takes: [wholeRows.runs.rigTest], refuses: part.refuses }),
    "rigTest.id": id,
    "rigTest.pair": whole(0, 1_000_000),
    "rigTest.side": oneOf("A", "B"),
    "rigTest.void": may(name),
    line: may(id),
    counts: may(list({ drill: "kerb", tries: 1, good: 1 }, 50)),
    "counts.0": {
      takes: [{ drill: "kerb", tries: 0, good: 0 }],
      refuses: [[null, "not made of fields"]],
    },
    "counts.0.drill": drill,
    "counts.0.corner": may(cornerNumber),
    "counts.0.tries": { takes: [7, 9999], refuses: whole(0, 9999).refuses },
    "counts.0.good": { takes: [0, 10], refuses: whole(0, 9999).refuses },
    tyres: may(note),
    fuelLitres: may(number(0, 1000)),
    setup: may(note),
    assists: may(note),
    guest: may(name),
    summary: may({ takes: [{ laps: 0 }], refuses: part.refuses }),
    "summary.laps": laps,
    "summary.bestMs": may(lapTime),
    "summary.bestDecimals": may(decimals),
    "summary.usualMs": may(lapTime),
    "summary.usualDecimals": may(decimals),
    "summary.off": may(laps),
    "summary.isOdd": trueOrNothing,
    lapsDriven: may(laps),
    gridPlace: may(whole(0, 999)),
    finishPlace: may(whole(0, 999)),
    note,
    laps: { takes: [[]], refuses: list(1, 1).refuses.slice(0, -1) },
    ...lapFields,
  },
  rigs: {
    ...stamped,
    from: date,
    name,
    screen: part,
    "screen.kind": may(oneOf("flat", "three", "curved", "headset")),
    "screen.width": may(number(0.1, 10)),
    "screen.height": may(number(0.05, 5)),
    "screen.eyeDistance": may(number(0.1, 10)),
    "screen.radius": may(number(0.2, 10)),
    "screen.bezel": may(number(0, 0.3)),
    "screen.sideAngle": may(number(0, 120)),
    "screen.pixelsAcross": may(number(100, 100_000)),
    view: part,
    "view.degrees": may(number(1, 360)),
    "view.axis": may(oneOf("horizontal", "vertical")),
    "view.note": may(note),
    wheel: part,
    "wheel.name": may(name),
    "wheel.torque": may(number(0, 100)),
    "wheel.gainPercent": may(number(0, 1000)),
    "wheel.damping": may(number(-1000, 1000)),
    "wheel.rotation": may(number(90, 3600)),
    "wheel.rimRadius": may(number(0.05, 0.5)),
    "wheel.note": may(note),
    pedals: part,
    "pedals.name": may(name),
    "pedals.brakeForceKg": may(number(0, 300)),
    "pedals.loadCellKg": may(number(0, 500)),
    "pedals.brakeDeadZone": may(number(0, 100)),
    "pedals.throttleDeadZone": may(number(0, 100)),
    "pedals.curve": may(name),
    "pedals.note": may(note),
    seat: part,
    "seat.height": may(number(0, 1.5)),
    "seat.eyeHeight": may(number(0.2, 2.5)),
    "seat.note": may(note),
    note,
  },
  targets: {
    ...stamped,
    comboId: id,
    kind: targetKind,
    value: targetValue,
    laps: may(laps),
    by: may(date),
    setAt: instant,
    setOn: date,
    start: may({ takes: [100, 86_400_000], refuses: anyNumber.refuses }),
    process: may(note),
    why: may(note),
    note: may(note),
    earlier: may(list({ kind: "best", value: 83_500, until: 0, untilDay: "2026-03-10" }, 999)),
    "earlier.0": {
      takes: [{ kind: "cleanShare", value: 800, until: 0, untilDay: "2026-03-10" }],
      refuses: [[null, "not made of fields"]],
    },
    "earlier.0.kind": targetKind,
    "earlier.0.value": targetValue,
    "earlier.0.laps": may(laps),
    "earlier.0.by": may(date),
    "earlier.0.until": instant,
    "earlier.0.untilDay": date,
    archivedAt: may(instant),
  },
  forecasts: {
    ...stamped,
    targetId: id,
    comboId: id,
    madeOn: date,
    by: date,
    chance: share,
    method: name,
    madeAfter: may(id),
    kind: may(targetKind),
    value: may({ takes: [100, 86_400_000], refuses: anyNumber.refuses }),
    laps: may(laps),
    sessions: may(whole(0, 1_000_000)),
    lapsASession: may(number(1, 999)),
    reached: may(yesOrNo),
    scoredOn: may(date),
  },
  rigTests: {
    ...stamped,
    comboId: id,
    question: note,
    sayA: may(name),
    sayB: may(name),
    field: may(name),
    rigA: may(id),
    rigB: may(id),
    figure: may(oneOf("usual", "scatter")),
    lapsARun: may(whole(0, 9999)),
    kept: may(oneOf("A", "B")),
    pairsPlanned: whole(0, 1_000_000),
    level: share,
    seed: {
      takes: [-9_007_199_254_740_991, 0, 9_007_199_254_740_991],
      refuses: [missing, ["7", "not a number"], [0.5, "not a whole number"], [2 ** 53, "not a whole number"]],
    },
    pairs: list({ first: "A" }, 1000),
    "pairs.0": { takes: [{ first: "A" }], refuses: [[null, "not made of fields"]] },
    "pairs.0.first": oneOf("A", "B"),
    "pairs.0.runA": may(id),
    "pairs.0.runB": may(id),
    endedAt: may(instant),
  },
  cornerReviews: {
    ...stamped,
    comboId: id,
    sessionId: may(id),
    lapId: may(id),
    on: date,
    corners: list({ number: 1 }, 999),
    "corners.0": { takes: [{ number: 1 }], refuses: [[null, "not made of fields"]] },
    "corners.0.number": cornerNumber,
    "corners.0.entry": may(number(-20, 100)),
    "corners.0.apex": may(number(-20, 100)),
    "corners.0.exit": may(number(-20, 100)),
    "corners.0.braking": may(oneOf("early", "right", "late")),
    "corners.0.throttle": may(oneOf("early", "right", "late", "twice")),
    "corners.0.isOffLine": trueOrNothing,
    "corners.0.note": may(note),
  },
  plans: {
    ...stamped,
    comboId: may(id),
    name: may(name),
    minutes: may(number(5, 1440)),
    lines: list({ purpose: "" }, 50),
    ...planLines("lines"),
  },
};
