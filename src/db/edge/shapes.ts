import {
  bends,
  brakings,
  drills,
  efforts,
  focuses,
  isSayable,
  planFigures,
  remarkKinds,
  runKinds,
  straights,
  surfaces,
  type TableName,
  targetKinds,
  testFigures,
  throttles,
  zoneForm,
} from "#domain";
import { isCount, isText } from "./kinds.ts";

/** Whether a value can be drawn and computed with, what it is not when it cannot, and whether it may be absent. */
export type Need = readonly [isRight: (value: unknown) => boolean, wrong: string, isOptional?: true];
type Row = Readonly<Record<string, unknown>>;
/** What a row must hold, field by field. */
export type Shape = readonly (readonly [field: string, need: Need])[];

const longestTime = 99 * 3_600_000;

const isNumber = (value: unknown): value is number => Number.isFinite(value);
const isWhole = (value: unknown): value is number => Number.isInteger(value);
const isTime = (value: unknown) => isWhole(value) && value > 0 && value <= longestTime;

const text: Need = [isText, "not a text"];
const key: Need = [(value) => typeof value === "string" && value.length === 36, "not an id"];
const number: Need = [isNumber, "not a number"];
const measure: Need = [(value) => isNumber(value) && value >= 0, "not a number from zero up"];
const count: Need = [isCount, "not a whole number"];
const instant: Need = [isSayable, "not an instant"];
const time: Need = [isTime, "not a time"];
const times: Need = [(value) => Array.isArray(value) && value.every(isTime), "not a list of times"];
const yes: Need = [(value) => typeof value === "boolean", "neither true nor false"];
const figures: Need = [(value) => typeof value === "object" && value !== null, "not figures"];
const decimals: Need = [(value) => isWhole(value) && value >= 0 && value <= 3, "not a number of decimals"];
const zone: Need = [
  (value) => typeof value === "string" && zoneForm.test(value),
  "not the name of a time zone",
];
const date: Need = [
  (value) => {
    if (typeof value !== "string" || !/^(19|20|21)\d\d-\d\d-\d\d$/.test(value)) return false;
    const day = new Date(`${value}T00:00:00Z`);
    return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(value);
  },
  "not a day of the calendar",
];

function oneOf(...values: readonly unknown[]): Need {
  const known = new Set(values);
  return [(value) => known.has(value), "not one of the words it may be"];
}
const may = ([isRight, wrong]: Need): Need => [isRight, wrong, true];
const fits = (value: unknown, shape: Shape) =>
  typeof value === "object" && value !== null && firstWrong(shape, value as Row) === undefined;
const part = (of: Readonly<Record<string, Need>>): Need => {
  const shape = Object.entries(of);
  return [(value) => fits(value, shape), "not as it should be"];
};
const list = ([isRight]: Need): Need => [
  (value) => Array.isArray(value) && value.every(isRight),
  "not a list as it should be",
];

/** The first field that does not hold what it must, with what it is not. */
export function firstWrong(shape: Shape, row: Row): string | undefined {
  // By index, because every field of every row that is read goes through here.
  for (let at = 0; at < shape.length; at += 1) {
    const [field, need] = shape[at] as Shape[number];
    const value = row[field];
    if (value === undefined && need[2] === true) continue;
    if (!need[0](value)) return `${field}: ${need[1]}`;
  }
  return undefined;
}

const stamped = { id: key, createdAt: instant, updatedAt: instant, deletedAt: may(instant) };
const row = (fields: Readonly<Record<string, Need>>): Shape => Object.entries({ ...stamped, ...fields });
const ofCombo = { comboId: key };
const planLines = list(
  part({
    id: may(key),
    purpose: text,
    laps: may(count),
    kind: may(oneOf(...runKinds)),
    effort: may(oneOf(...efforts)),
    attendTo: may(text),
    goodWhen: may(text),
    reason: may(text),
    rule: may(text),
    corner: may(count),
    sector: may(count),
    check: may(part({ figure: oneOf(...planFigures), value: may(measure) })),
    drill: may(oneOf(...drills)),
    rigTest: may(key),
    skipped: may(oneOf(true)),
  }),
);
const wanted = { kind: oneOf(...targetKinds), value: measure, laps: may(count), by: may(date) };

/** What a lap must hold. That decimals stand where a time stands is seen to apart. */
export const lapShape: Shape = row({
  n: number,
  ms: may(time),
  decimals: may(decimals),
  sectors: may(times),
  sectorDecimals: may(list(decimals)),
  source: oneOf("typed", "memory", "imported"),
  remarks: list(part({ kind: oneOf(...remarkKinds.map(({ kind }) => kind)), corner: may(count) })),
  note: may(text),
  isNotBest: may(oneOf(true)),
});

/**
 * What drawing and computing need of each table's rows: never more than the checker of files asks for (`db/checks`), because
 * what was once accepted must not vanish. Few words, because it stands in the first script; the checker has the better ones.
 */
export const shapes: { readonly [T in TableName | "digests"]: Shape } = {
  preferences: row({
    displayDecimals: may(oneOf(1, 2, 3)),
    relativeTo: may(oneOf("lap", "pb", "target")),
    dayStartsAt: may([(value) => isWhole(value) && value >= 0 && value < 24, "not an hour"]),
    settlingLaps: may(oneOf(0, 1, 2, 3)),
    marginPercent: may(measure),
  }),
  cars: row({
    name: text,
    width: may(measure),
    grip: may(measure),
    braking: may(measure),
    drive: may(measure),
    topSpeed: may(measure),
  }),
  tracks: row({ name: text }),
  layouts: row({
    trackId: key,
    name: text,
    sectors: may(count),
    length: may(measure),
    corners: list(
      part({
        number: count,
        name: may(text),
        direction: may(oneOf("left", "right")),
        bend: may(oneOf(...bends)),
        after: may(oneOf(...straights)),
        afterLength: may(measure),
        sector: may(count),
        radius: may(measure),
        width: may(measure),
        angle: may(number),
        kerbs: may(part({ entry: may(measure), apex: may(measure), exit: may(measure) })),
      }),
    ),
  }),
  combos: row({
    carId: key,
    layoutId: key,
    lowestSpeeds: may(list(part({ number: count, speed: measure }))),
    practice: may(part({ sessionsAWeek: may(measure), lapsASession: may(measure) })),
  }),
  pages: row({ ...ofCombo, from: instant, reason: text }),
  references: row({ ...ofCombo, ms: time, decimals, source: text }),
  sessions: row({
    ...ofCombo,
    startedAt: instant,
    isTimeOfDayKnown: yes,
    date,
    zone,
    endedAt: may(instant),
    focus: oneOf(...focuses.map(({ focus }) => focus)),
    note: text,
    conditions: may(text),
    targetMs: may(time),
    plan: may(planLines),
  }),
  runs: row({
    ...ofCombo,
    sessionId: key,
    n: number,
    startedAt: instant,
    endedAt: may(instant),
    kind: oneOf(...runKinds),
    effort: oneOf(...efforts),
    surface: oneOf(...surfaces),
    rigId: may(key),
    rigTest: may(part({ id: key, pair: count, side: oneOf("A", "B"), void: may(text) })),
    line: may(key),
    counts: may(list(part({ drill: oneOf(...drills), corner: may(count), tries: count, good: count }))),
    tyres: may(text),
    fuelLitres: may(measure),
    setup: may(text),
    assists: may(text),
    guest: may(text),
    summary: may(
      part({
        laps: count,
        bestMs: may(time),
        bestDecimals: may(decimals),
        usualMs: may(time),
        usualDecimals: may(decimals),
        off: may(count),
      }),
    ),
    lapsDriven: may(count),
    gridPlace: may(count),
    finishPlace: may(count),
    note: text,
    laps: [Array.isArray, "not a list of laps"],
  }),
  rigs: row({
    from: date,
    name: text,
    screen: part({
      kind: may(oneOf("flat", "three", "curved", "headset")),
      width: may(measure),
      height: may(measure),
      eyeDistance: may(measure),
      radius: may(measure),
      bezel: may(measure),
      sideAngle: may(number),
      pixelsAcross: may(measure),
    }),
    view: part({ degrees: may(measure), axis: may(oneOf("horizontal", "vertical")), note: may(text) }),
    wheel: part({
      name: may(text),
      torque: may(measure),
      gainPercent: may(measure),
      damping: may(number),
      rotation: may(measure),
      rimRadius: may(measure),
      note: may(text),
    }),
    pedals: part({
      name: may(text),
      brakeForceKg: may(measure),
      loadCellKg: may(measure),
      brakeDeadZone: may(measure),
      throttleDeadZone: may(measure),
      curve: may(text),
      note: may(text),
    }),
    seat: part({ height: may(measure), eyeHeight: may(measure), note: may(text) }),
    note: text,
  }),
  targets: row({
    ...ofCombo,
    ...wanted,
    setAt: instant,
    setOn: date,
    start: may(number),
    process: may(text),
    why: may(text),
    note: may(text),
    earlier: may(list(part({ ...wanted, until: instant, untilDay: date }))),
    archivedAt: may(instant),
  }),
  forecasts: row({
    ...ofCombo,
    targetId: key,
    madeOn: date,
    by: date,
    chance: measure,
    method: text,
    madeAfter: may(key),
    kind: may(oneOf(...targetKinds)),
    value: may(measure),
    laps: may(count),
    sessions: may(count),
    lapsASession: may(measure),
    reached: may(yes),
    scoredOn: may(date),
  }),
  rigTests: row({
    ...ofCombo,
    question: text,
    sayA: may(text),
    sayB: may(text),
    field: may(text),
    rigA: may(key),
    rigB: may(key),
    figure: may(oneOf(...testFigures)),
    smallestMs: may(measure),
    spreadMs: may(measure),
    lapsARun: may(count),
    pairsPlanned: count,
    level: measure,
    seed: number,
    pairs: list(part({ first: oneOf("A", "B"), runA: may(key), runB: may(key) })),
    endedAt: may(instant),
    kept: may(oneOf("A", "B")),
  }),
  cornerReviews: row({
    ...ofCombo,
    sessionId: may(key),
    lapId: may(key),
    on: date,
    corners: list(
      part({
        number: count,
        entry: may(number),
        apex: may(number),
        exit: may(number),
        braking: may(oneOf(...brakings)),
        throttle: may(oneOf(...throttles)),
        isOffLine: may(yes),
        note: may(text),
      }),
    ),
  }),
  plans: row({ comboId: may(key), name: may(text), minutes: may(measure), lines: planLines }),
  digests: Object.entries({
    sessionId: key,
    ...ofCombo,
    startedAt: instant,
    changedAt: instant,
    openSince: may(instant),
    staleSince: may(instant),
    bestKey: may(number),
    madeFrom: may(instant),
    methodVersion: may(text),
    digest: may(figures),
  }),
};
