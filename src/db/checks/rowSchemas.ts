import * as v from "valibot";
import {
  efforts,
  focuses,
  type RemarkKind,
  remarkKinds,
  runKinds,
  surfaces,
  type TableName,
  type Tables,
  targetKinds,
} from "#domain";
import {
  count,
  date,
  decimals,
  finite,
  id,
  instant,
  measure,
  name,
  note,
  stamped,
  time,
  zone,
} from "./plain.ts";

const may = v.exactOptional;
const several = <S extends v.GenericSchema>(item: S, most: number) =>
  v.pipe(v.array(item), v.maxLength(most));
const remarkNames = remarkKinds.map(({ kind }) => kind) as [RemarkKind, ...RemarkKind[]];
const cornerNumber = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(999));

const corner = v.looseObject({
  number: cornerNumber,
  name: may(name),
  direction: may(v.picklist(["left", "right"])),
  radius: may(measure),
  width: may(measure),
  angle: may(finite),
});

const plannedRun = v.looseObject({
  purpose: note,
  laps: may(count),
  effort: may(v.picklist(efforts)),
  attendTo: may(note),
  goodWhen: may(note),
});

const lap = v.pipe(
  v.looseObject({
    ...stamped,
    n: finite,
    ms: may(time),
    decimals: may(decimals),
    sectors: may(several(time, 99)),
    source: v.picklist(["typed", "memory", "imported"]),
    remarks: several(v.looseObject({ kind: v.picklist(remarkNames), corner: may(cornerNumber) }), 50),
    note: may(note),
    isNotBest: may(v.literal(true)),
    isOdd: may(v.literal(true)),
  }),
  v.check(
    (row) => (row.ms === undefined) === (row.decimals === undefined),
    "decimals stand where a time stands",
  ),
);

const summary = v.looseObject({
  laps: count,
  bestMs: may(time),
  bestDecimals: may(decimals),
  usualMs: may(time),
  usualDecimals: may(decimals),
  off: may(count),
  isOdd: may(v.literal(true)),
});

const rig = v.looseObject({
  ...stamped,
  from: date,
  name,
  screen: v.looseObject({
    kind: may(v.picklist(["flat", "three", "curved", "headset"])),
    width: may(measure),
    height: may(measure),
    eyeDistance: may(measure),
    radius: may(measure),
    bezel: may(measure),
    sideAngle: may(finite),
    pixelsAcross: may(measure),
  }),
  view: v.looseObject({
    degrees: may(measure),
    axis: may(v.picklist(["horizontal", "vertical"])),
    note: may(note),
  }),
  wheel: v.looseObject({
    name: may(name),
    torque: may(measure),
    gainPercent: may(measure),
    damping: may(finite),
    rotation: may(measure),
    rimRadius: may(measure),
    note: may(note),
  }),
  pedals: v.looseObject({ name: may(name), brakeForceKg: may(measure), note: may(note) }),
  seat: v.looseObject({ note: may(note) }),
  note,
});

const share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));

/** What every row must hold. Fields not named here are kept: a newer app may have written them. */
export const rowSchemas: { readonly [T in TableName]: v.GenericSchema<unknown, Tables[T]> } = {
  preferences: v.looseObject({
    ...stamped,
    displayDecimals: v.picklist([1, 2, 3]),
    relativeTo: v.picklist(["lap", "pb", "target"]),
    dayStartsAt: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(23)),
    settlingLaps: v.picklist([0, 1, 2, 3]),
    marginPercent: v.pipe(finite, v.minValue(0), v.maxValue(100)),
  }),
  cars: v.looseObject({ ...stamped, name }),
  tracks: v.looseObject({ ...stamped, name }),
  layouts: v.looseObject({
    ...stamped,
    trackId: id,
    name,
    sectors: may(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(99))),
    length: may(measure),
    corners: several(corner, 999),
  }),
  combos: v.looseObject({ ...stamped, carId: id, layoutId: id }),
  pages: v.looseObject({ ...stamped, comboId: id, from: instant, reason: note }),
  references: v.looseObject({ ...stamped, comboId: id, ms: time, decimals, source: note }),
  sessions: v.looseObject({
    ...stamped,
    comboId: id,
    startedAt: instant,
    isTimeOfDayKnown: v.boolean(),
    date,
    zone,
    endedAt: may(instant),
    focus: v.picklist(focuses.map(({ focus }) => focus)),
    note,
    conditions: may(note),
    targetMs: may(time),
    plan: may(several(plannedRun, 50)),
  }),
  runs: v.looseObject({
    ...stamped,
    sessionId: id,
    comboId: id,
    n: finite,
    startedAt: instant,
    endedAt: may(instant),
    kind: v.picklist(runKinds),
    effort: v.picklist(efforts),
    surface: v.picklist(surfaces),
    rigId: may(id),
    tyres: may(note),
    fuelLitres: may(measure),
    setup: may(note),
    assists: may(note),
    guest: may(name),
    summary: may(summary),
    lapsDriven: may(count),
    gridPlace: may(count),
    finishPlace: may(count),
    note,
    laps: several(lap, 100_000),
  }),
  rigs: rig,
  targets: v.looseObject({
    ...stamped,
    comboId: id,
    kind: v.picklist(targetKinds),
    value: v.pipe(finite, v.minValue(0)),
    laps: may(count),
    by: may(date),
    setAt: instant,
    setOn: date,
    start: may(finite),
    process: may(note),
    archivedAt: may(instant),
  }),
  forecasts: v.looseObject({
    ...stamped,
    targetId: id,
    comboId: id,
    madeOn: date,
    by: date,
    chance: share,
    method: name,
    reached: may(v.boolean()),
  }),
  rigTests: v.looseObject({
    ...stamped,
    comboId: id,
    question: note,
    rigA: id,
    rigB: id,
    pairsPlanned: count,
    level: share,
    seed: v.pipe(v.number(), v.safeInteger()),
    pairs: several(v.looseObject({ first: v.picklist(["A", "B"]), runA: may(id), runB: may(id) }), 1000),
    endedAt: may(instant),
  }),
  cornerReviews: v.looseObject({
    ...stamped,
    comboId: id,
    sessionId: may(id),
    on: date,
    corners: several(
      v.looseObject({
        number: cornerNumber,
        entry: may(measure),
        apex: may(measure),
        exit: may(measure),
        note: may(note),
      }),
      999,
    ),
  }),
};
