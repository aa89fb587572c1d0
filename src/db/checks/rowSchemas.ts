import * as v from "valibot";
import {
  bends,
  brakings,
  carRanges,
  cornerRanges,
  drills,
  efforts,
  focuses,
  lapRange,
  layoutRanges,
  planFigures,
  practiceRanges,
  type Range,
  type RemarkKind,
  remarkKinds,
  rigRanges,
  runKinds,
  runRanges,
  straights,
  surfaces,
  type TableName,
  type Tables,
  type TargetKind,
  targetKinds,
  testFigures,
  throttles,
} from "#domain";
import { preferencesId } from "../preferencesRow.ts";
import {
  count,
  date,
  decimals,
  finite,
  id,
  instant,
  name,
  note,
  partOfLap,
  place,
  stamped,
  time,
  within,
  zone,
} from "./plain.ts";

const may = v.exactOptional;
const several = <S extends v.GenericSchema>(item: S, most: number) =>
  v.pipe(v.array(item), v.maxLength(most));
const remarkNames = remarkKinds.map(({ kind }) => kind) as [RemarkKind, ...RemarkKind[]];
const cornerNumber = count(cornerRanges.number);
/** Fields of a part of a row that may be there, each with its range. */
const ranged = <K extends string>(ranges: Readonly<Record<K, Range>>) =>
  Object.fromEntries(Object.entries<Range>(ranges).map(([field, range]) => [field, may(within(range))])) as {
    [F in K]: v.ExactOptionalSchema<ReturnType<typeof within>, undefined>;
  };

const corner = v.looseObject({
  number: cornerNumber,
  name: may(name),
  direction: may(v.picklist(["left", "right"])),
  bend: may(v.picklist(bends)),
  after: may(v.picklist(straights)),
  afterLength: may(within(cornerRanges.afterLength)),
  sector: may(count(cornerRanges.sector)),
  radius: may(within(cornerRanges.radius)),
  width: may(within(cornerRanges.width)),
  angle: may(within(cornerRanges.angle)),
  kerbs: may(
    v.looseObject({
      entry: may(within(cornerRanges.kerb)),
      apex: may(within(cornerRanges.kerb)),
      exit: may(within(cornerRanges.kerb)),
    }),
  ),
});

const plannedRun = v.looseObject({
  id: may(id),
  purpose: note,
  laps: may(count(runRanges.laps)),
  kind: may(v.picklist(runKinds)),
  effort: may(v.picklist(efforts)),
  attendTo: may(note),
  goodWhen: may(note),
  reason: may(note),
  rule: may(name),
  corner: may(cornerNumber),
  sector: may(count(cornerRanges.sector)),
  check: may(v.looseObject({ figure: v.picklist(planFigures), value: may(v.pipe(finite, v.minValue(0))) })),
  drill: may(v.picklist(drills)),
  rigTest: may(id),
  skipped: may(v.literal(true)),
});
const plan = several(plannedRun, 50);

const drillCount = v.pipe(
  v.looseObject({
    drill: v.picklist(drills),
    corner: may(cornerNumber),
    tries: count(practiceRanges.tries),
    good: count(practiceRanges.tries),
  }),
  v.check(({ tries, good }) => good <= tries, "more worked than were tried"),
);

const wanted = {
  kind: v.picklist(targetKinds),
  value: v.pipe(finite, v.minValue(0)),
  laps: may(count(runRanges.laps)),
  by: may(date),
};

const lap = v.pipe(
  v.looseObject({
    ...stamped,
    n: place,
    ms: may(time),
    decimals: may(decimals),
    sectors: may(several(partOfLap, 99)),
    sectorDecimals: may(several(decimals, 99)),
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
  v.check(
    ({ sectors, sectorDecimals }) =>
      sectorDecimals === undefined || sectorDecimals.length === sectors?.length,
    "sectors and their decimals are not as many",
  ),
  v.check(({ ms, sectors }) => ms === undefined || isSumNear(ms, sectors), "its sectors are another lap's"),
);

/**
 * Whether sectors add up to their lap. What was typed may lie 2 ms and half of each last digit off, which is half a second
 * where only whole ones were typed.
 */
function isSumNear(ms: number, sectors: readonly number[] = []): boolean {
  const sum = sectors.reduce((all, sector) => all + sector, 0);
  return sectors.length === 0 || Math.abs(sum - ms) <= 2 + 500 * (sectors.length + 1);
}

const summary = v.looseObject({
  laps: count(runRanges.laps),
  bestMs: may(time),
  bestDecimals: may(decimals),
  usualMs: may(time),
  usualDecimals: may(decimals),
  off: may(count(runRanges.laps)),
  isOdd: may(v.literal(true)),
});

const rig = v.looseObject({
  ...stamped,
  from: date,
  name,
  screen: v.looseObject({
    kind: may(v.picklist(["flat", "three", "curved", "headset"])),
    ...ranged(rigRanges.screen),
  }),
  view: v.looseObject({
    ...ranged(rigRanges.view),
    axis: may(v.picklist(["horizontal", "vertical"])),
    note: may(note),
  }),
  wheel: v.looseObject({ ...ranged(rigRanges.wheel), name: may(name), note: may(note) }),
  pedals: v.looseObject({ ...ranged(rigRanges.pedals), name: may(name), curve: may(name), note: may(note) }),
  seat: v.looseObject({ ...ranged(rigRanges.seat), note: may(note) }),
  note,
});

const share = within({ least: 0, most: 1 });
const unused = within(cornerRanges.unused);

/** A target's figure: a lap time, a scatter of some, or thousandths of a share. */
function isFigureOf(kind: TargetKind, value: number): boolean {
  if (kind === "cleanShare") return value <= 1000;
  return value <= lapRange.most && (kind === "scatter" || value >= lapRange.least);
}

/** What every row must hold. Fields not named here are kept: a newer app may have written them. */
export const rowSchemas: { readonly [T in TableName]: v.GenericSchema<unknown, Tables[T]> } = {
  preferences: v.looseObject({
    ...stamped,
    id: v.literal(preferencesId, "not the id of preferences"),
    displayDecimals: v.picklist([1, 2, 3]),
    relativeTo: v.picklist(["lap", "pb", "target"]),
    dayStartsAt: count({ least: 0, most: 23 }),
    settlingLaps: v.picklist([0, 1, 2, 3]),
    marginPercent: within({ least: 0, most: 100 }),
  }),
  cars: v.looseObject({ ...ranged(carRanges), ...stamped, name }),
  tracks: v.looseObject({ ...stamped, name }),
  layouts: v.looseObject({
    ...stamped,
    trackId: id,
    name,
    sectors: may(count(layoutRanges.sectors)),
    length: may(within(layoutRanges.length)),
    corners: several(corner, 999),
  }),
  combos: v.looseObject({
    ...stamped,
    carId: id,
    layoutId: id,
    lowestSpeeds: may(
      several(v.looseObject({ number: cornerNumber, speed: within(cornerRanges.lowestSpeed) }), 999),
    ),
    practice: may(
      v.looseObject({
        sessionsAWeek: may(within(practiceRanges.sessionsAWeek)),
        lapsASession: may(within(practiceRanges.lapsASession)),
      }),
    ),
  }),
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
    plan: may(plan),
  }),
  runs: v.looseObject({
    ...stamped,
    sessionId: id,
    comboId: id,
    n: place,
    startedAt: instant,
    endedAt: may(instant),
    kind: v.picklist(runKinds),
    effort: v.picklist(efforts),
    surface: v.picklist(surfaces),
    rigId: may(id),
    rigTest: may(v.looseObject({ id, pair: count(), side: v.picklist(["A", "B"]), void: may(name) })),
    line: may(id),
    counts: may(several(drillCount, 50)),
    tyres: may(note),
    fuelLitres: may(within(runRanges.fuelLitres)),
    setup: may(note),
    assists: may(note),
    guest: may(name),
    summary: may(summary),
    lapsDriven: may(count(runRanges.laps)),
    gridPlace: may(count(runRanges.gridPlace)),
    finishPlace: may(count(runRanges.finishPlace)),
    note,
    laps: several(lap, 100_000),
  }),
  rigs: rig,
  targets: v.pipe(
    v.looseObject({
      ...stamped,
      comboId: id,
      ...wanted,
      setAt: instant,
      setOn: date,
      start: may(finite),
      process: may(note),
      why: may(note),
      note: may(note),
      earlier: may(several(v.looseObject({ ...wanted, until: instant, untilDay: date }), 999)),
      archivedAt: may(instant),
    }),
    v.check(
      ({ kind, value, start = value, earlier = [] }) =>
        [value, start].every((figure) => isFigureOf(kind, figure)) &&
        earlier.every((was) => isFigureOf(was.kind, was.value)),
      "no figure of its kind",
    ),
  ),
  forecasts: v.pipe(
    v.looseObject({
      ...stamped,
      targetId: id,
      comboId: id,
      madeOn: date,
      by: date,
      chance: share,
      method: name,
      madeAfter: may(id),
      kind: may(v.picklist(targetKinds)),
      value: may(finite),
      laps: may(count(runRanges.laps)),
      sessions: may(count()),
      lapsASession: may(within(practiceRanges.lapsASession)),
      reached: may(v.boolean()),
      scoredOn: may(date),
    }),
    v.check(
      ({ kind, value }) => kind === undefined || value === undefined || isFigureOf(kind, value),
      "no figure of its kind",
    ),
  ),
  rigTests: v.looseObject({
    ...stamped,
    comboId: id,
    question: note,
    sayA: may(name),
    sayB: may(name),
    field: may(name),
    valueA: may(v.union([v.number(), name])),
    valueB: may(v.union([v.number(), name])),
    rigA: may(id),
    rigB: may(id),
    figure: may(v.picklist(testFigures)),
    smallestMs: may(v.pipe(v.number(), v.minValue(0))),
    spreadMs: may(v.pipe(v.number(), v.minValue(0))),
    lapsARun: may(count(runRanges.laps)),
    pairsPlanned: count(),
    level: share,
    seed: v.pipe(v.number(), v.safeInteger()),
    pairs: several(v.looseObject({ first: v.picklist(["A", "B"]), runA: may(id), runB: may(id) }), 1000),
    endedAt: may(instant),
    kept: may(v.picklist(["A", "B"])),
  }),
  cornerReviews: v.looseObject({
    ...stamped,
    comboId: id,
    sessionId: may(id),
    lapId: may(id),
    on: date,
    corners: several(
      v.looseObject({
        number: cornerNumber,
        entry: may(unused),
        apex: may(unused),
        exit: may(unused),
        braking: may(v.picklist(brakings)),
        throttle: may(v.picklist(throttles)),
        isOffLine: may(v.literal(true)),
        note: may(note),
      }),
      999,
    ),
  }),
  plans: v.looseObject({
    ...stamped,
    comboId: may(id),
    name: may(name),
    minutes: may(within(practiceRanges.minutes)),
    lines: plan,
  }),
};
