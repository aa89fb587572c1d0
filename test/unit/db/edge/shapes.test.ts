import { expect, test } from "vitest";
import { newestSchema } from "#db";
import { asideRow, tableNames } from "#domain";
import { isSound, sift } from "../../../../src/db/edge/sift.ts";
import { fieldLimits } from "../../../support/fieldLimits.ts";
import { absent, idAt, wholeLap, wholeRows, withAt } from "../../../support/wholeRows.ts";

const digest = {
  sessionId: idAt(8),
  comboId: idAt(5),
  startedAt: 1,
  changedAt: 2,
  openSince: 1,
  staleSince: 2,
  bestKey: -0.5,
  madeFrom: 2,
  methodVersion: "1",
  digest: [],
};
const rows = { ...wholeRows, digests: digest };
type Sifted = keyof typeof rows;

/** What a field is not, and values that it is not. */
type Wrong = readonly [string, ...unknown[]];

const text: Wrong = ["not a text", 7, null, ["x"]];
const key: Wrong = ["not an id", "short", `${idAt(1)}0`, 7, null, Array.from({ length: 36 }, () => "0")];
const number: Wrong = ["not a number", "7", Number.NaN, Number.NEGATIVE_INFINITY, null];
const measure: Wrong = ["not a number from zero up", -0.001, "7", Number.NaN, null];
const count: Wrong = ["not a whole number", -1, 1.5, "1", null];
const instant: Wrong = [
  "not an instant",
  "12",
  Number.NaN,
  Date.parse("0001-01-03") - 1,
  Date.parse("9999-12-29") + 1,
  null,
];
const time: Wrong = ["not a time", 0, -1, 0.5, 99 * 3_600_000 + 1, "83456", null];
const decimals: Wrong = ["not a number of decimals", -1, 4, 0.5, "1", null];
const yes: Wrong = ["neither true nor false", 0, 1, "true", null];
const word: Wrong = ["not one of the words it may be", "other", 7, null, false];
const date: Wrong = [
  "not a day of the calendar",
  "1899-12-31",
  "2200-01-01",
  "2026-02-29",
  "2026-13-01",
  "2026-3-1",
  "on 2026-03-10",
  "2026-03-10T12:00",
  20_260_310,
  ["2026-03-10"],
  null,
];
const zone: Wrong = ["not the name of a time zone", "Europe / Berlin", "", 7, ["UTC"]];
const figures: Wrong = ["not figures", 7, "x", null, true];
const part: Wrong = ["not as it should be", 7, "x", null];
const list: Wrong = ["not a list as it should be", {}, "x", null, [null], [7]];
const partHas = ([, ...values]: Wrong): Wrong => ["not as it should be", ...values];
const listHas = ([, ...values]: Wrong): Wrong => ["not a list as it should be", ...values];

const ofRow = { id: key, createdAt: instant, updatedAt: instant };
const optionalOfRow = { deletedAt: instant };

interface Fields {
  /** Fields a row cannot be without. */
  readonly needs: Readonly<Record<string, Wrong>>;
  /** Fields that may be absent. */
  readonly may?: Readonly<Record<string, Wrong>>;
}

const lapFields: Fields = {
  needs: { n: number, source: word, remarks: list, "remarks.0.kind": listHas(word), ...ofRow },
  may: {
    sectors: ["not a list of times", {}, "x", null, [0], [27_100, "x"]],
    sectorDecimals: ["not a list as it should be", {}, null, [4], [1, "x"]],
    "remarks.0.corner": listHas(count),
    note: text,
    isNotBest: word,
    ...optionalOfRow,
  },
};

/** Fields of a line of a plan, by its path in the row that holds it. */
const planNeeds = (at: string) => ({
  [`${at}.0.purpose`]: listHas(text),
  [`${at}.0.check.figure`]: listHas(word),
});
const planMay = (at: string) => ({
  [`${at}.0.id`]: listHas(key),
  [`${at}.0.laps`]: listHas(count),
  [`${at}.0.kind`]: listHas(word),
  [`${at}.0.effort`]: listHas(word),
  [`${at}.0.attendTo`]: listHas(text),
  [`${at}.0.goodWhen`]: listHas(text),
  [`${at}.0.reason`]: listHas(text),
  [`${at}.0.rule`]: listHas(text),
  [`${at}.0.corner`]: listHas(count),
  [`${at}.0.sector`]: listHas(count),
  [`${at}.0.check`]: listHas(part),
  [`${at}.0.check.value`]: listHas(measure),
  [`${at}.0.drill`]: listHas(word),
  [`${at}.0.rigTest`]: listHas(key),
  [`${at}.0.skipped`]: listHas(word),
});

const fields: { readonly [T in Sifted]: Fields } = {
  preferences: {
    needs: ofRow,
    may: {
      displayDecimals: word,
      relativeTo: word,
      dayStartsAt: ["not an hour", -1, 24, 0.5, "4", null],
      settlingLaps: word,
      marginPercent: measure,
      ...optionalOfRow,
    },
  },
  cars: {
    needs: { name: text, ...ofRow },
    may: {
      width: measure,
      grip: measure,
      braking: measure,
      drive: measure,
      topSpeed: measure,
      ...optionalOfRow,
    },
  },
  tracks: { needs: { name: text, ...ofRow }, may: optionalOfRow },
  layouts: {
    needs: { trackId: key, name: text, corners: list, "corners.0.number": listHas(count), ...ofRow },
    may: {
      sectors: count,
      length: measure,
      "corners.0.name": listHas(text),
      "corners.0.direction": listHas(word),
      "corners.0.radius": listHas(measure),
      "corners.0.width": listHas(measure),
      "corners.0.angle": listHas(number),
      "corners.0.bend": listHas(word),
      "corners.0.after": listHas(word),
      "corners.0.afterLength": listHas(measure),
      "corners.0.sector": listHas(count),
      "corners.0.kerbs": listHas(part),
      "corners.0.kerbs.entry": listHas(measure),
      "corners.0.kerbs.apex": listHas(measure),
      "corners.0.kerbs.exit": listHas(measure),
      ...optionalOfRow,
    },
  },
  combos: {
    needs: {
      carId: key,
      layoutId: key,
      "lowestSpeeds.0.number": listHas(count),
      "lowestSpeeds.0.speed": listHas(measure),
      ...ofRow,
    },
    may: {
      lowestSpeeds: list,
      practice: part,
      "practice.sessionsAWeek": partHas(measure),
      "practice.lapsASession": partHas(measure),
      ...optionalOfRow,
    },
  },
  pages: { needs: { comboId: key, from: instant, reason: text, ...ofRow }, may: optionalOfRow },
  references: {
    needs: { comboId: key, ms: time, decimals, source: text, ...ofRow },
    may: optionalOfRow,
  },
  sessions: {
    needs: {
      comboId: key,
      startedAt: instant,
      isTimeOfDayKnown: yes,
      date,
      zone,
      focus: word,
      note: text,
      ...planNeeds("plan"),
      ...ofRow,
    },
    may: {
      endedAt: instant,
      conditions: text,
      targetMs: time,
      plan: list,
      ...planMay("plan"),
      ...optionalOfRow,
    },
  },
  runs: {
    needs: {
      sessionId: key,
      comboId: key,
      n: number,
      startedAt: instant,
      kind: word,
      effort: word,
      surface: word,
      note: text,
      laps: ["not a list of laps", {}, "x", null, 7],
      "summary.laps": partHas(count),
      "rigTest.id": partHas(key),
      "rigTest.pair": partHas(count),
      "rigTest.side": partHas(word),
      "counts.0.drill": listHas(word),
      "counts.0.tries": listHas(count),
      "counts.0.good": listHas(count),
      ...ofRow,
    },
    may: {
      endedAt: instant,
      rigId: key,
      rigTest: part,
      "rigTest.void": partHas(text),
      line: key,
      counts: list,
      "counts.0.corner": listHas(count),
      tyres: text,
      fuelLitres: measure,
      setup: text,
      assists: text,
      guest: text,
      summary: part,
      "summary.bestMs": partHas(time),
      "summary.bestDecimals": partHas(decimals),
      "summary.usualMs": partHas(time),
      "summary.usualDecimals": partHas(decimals),
      "summary.off": partHas(count),
      lapsDriven: count,
      gridPlace: count,
      finishPlace: count,
      ...optionalOfRow,
    },
  },
  rigs: {
    needs: {
      from: date,
      name: text,
      screen: part,
      view: part,
      wheel: part,
      pedals: part,
      seat: part,
      note: text,
      ...ofRow,
    },
    may: {
      "screen.kind": partHas(word),
      "screen.width": partHas(measure),
      "screen.height": partHas(measure),
      "screen.eyeDistance": partHas(measure),
      "screen.radius": partHas(measure),
      "screen.bezel": partHas(measure),
      "screen.sideAngle": partHas(number),
      "screen.pixelsAcross": partHas(measure),
      "view.degrees": partHas(measure),
      "view.axis": partHas(word),
      "view.note": partHas(text),
      "wheel.name": partHas(text),
      "wheel.torque": partHas(measure),
      "wheel.gainPercent": partHas(measure),
      "wheel.damping": partHas(number),
      "wheel.rotation": partHas(measure),
      "wheel.rimRadius": partHas(measure),
      "wheel.note": partHas(text),
      "pedals.name": partHas(text),
      "pedals.brakeForceKg": partHas(measure),
      "pedals.loadCellKg": partHas(measure),
      "pedals.brakeDeadZone": partHas(measure),
      "pedals.throttleDeadZone": partHas(measure),
      "pedals.curve": partHas(text),
      "pedals.note": partHas(text),
      "seat.height": partHas(measure),
      "seat.eyeHeight": partHas(measure),
      "seat.note": partHas(text),
      ...optionalOfRow,
    },
  },
  targets: {
    needs: {
      comboId: key,
      kind: word,
      value: measure,
      setAt: instant,
      setOn: date,
      "earlier.0.kind": listHas(word),
      "earlier.0.value": listHas(measure),
      "earlier.0.until": listHas(instant),
      "earlier.0.untilDay": listHas(date),
      ...ofRow,
    },
    may: {
      laps: count,
      by: date,
      start: number,
      process: text,
      why: text,
      note: text,
      earlier: list,
      "earlier.0.laps": listHas(count),
      "earlier.0.by": listHas(date),
      archivedAt: instant,
      ...optionalOfRow,
    },
  },
  forecasts: {
    needs: { comboId: key, targetId: key, madeOn: date, by: date, chance: measure, method: text, ...ofRow },
    may: {
      madeAfter: key,
      kind: word,
      value: measure,
      laps: count,
      sessions: count,
      lapsASession: measure,
      reached: yes,
      scoredOn: date,
      ...optionalOfRow,
    },
  },
  rigTests: {
    needs: {
      comboId: key,
      question: text,
      pairsPlanned: count,
      level: measure,
      seed: number,
      pairs: list,
      "pairs.0.first": listHas(word),
      ...ofRow,
    },
    may: {
      sayA: text,
      sayB: text,
      field: text,
      rigA: key,
      rigB: key,
      figure: word,
      smallestMs: measure,
      spreadMs: measure,
      lapsARun: count,
      kept: word,
      "pairs.0.runA": listHas(key),
      "pairs.0.runB": listHas(key),
      endedAt: instant,
      ...optionalOfRow,
    },
  },
  cornerReviews: {
    needs: { comboId: key, on: date, corners: list, "corners.0.number": listHas(count), ...ofRow },
    may: {
      sessionId: key,
      lapId: key,
      "corners.0.entry": listHas(number),
      "corners.0.apex": listHas(number),
      "corners.0.exit": listHas(number),
      "corners.0.braking": listHas(word),
      "corners.0.throttle": listHas(word),
      "corners.0.isOffLine": listHas(yes),
      "corners.0.note": listHas(text),
      ...optionalOfRow,
    },
  },
  plans: {
    needs: { lines: list, ...planNeeds("lines"), ...ofRow },
    may: { comboId: key, name: text, minutes: measure, ...planMay("lines"), ...optionalOfRow },
  },
  digests: {
    needs: { sessionId: key, comboId: key, startedAt: instant, changedAt: instant },
    may: {
      openSince: instant,
      staleSince: instant,
      bestKey: number,
      madeFrom: instant,
      methodVersion: text,
      digest: figures,
    },
  },
};

/** Every wrong value of every field, with what is said of it, and every field that may be absent. */
function* wrongValues({ needs, may = {} }: Fields) {
  for (const [field, [words, ...values]] of Object.entries({ ...needs, ...may }))
    for (const value of field in needs ? [...values, absent] : values)
      yield { field, value, why: `${field.split(".")[0]}: ${words}` };
}

const tables = Object.keys(rows) as Sifted[];

for (const table of tables)
  test(`a row of ${table} in which one field cannot be right is sifted out with its reason`, () => {
    const row = rows[table];
    expect(isSound(table, row)).toBe(true);
    for (const { field, value, why } of wrongValues(fields[table])) {
      const bad = withAt<object>(row, field, value) as Readonly<Record<string, unknown>>;
      const key = bad[table === "digests" ? "sessionId" : "id"];
      expect(isSound(table, bad), `${field} ${String(value)}`).toBe(false);
      expect(sift(table, bad), `${field} ${String(value)}`).toEqual({
        row: undefined,
        bad: [{ table, id: String(key), key, aside: asideRow(table, bad, why, newestSchema) }],
      });
    }
  });

for (const table of tables)
  test(`a row of ${table} is sound without what may be absent`, () => {
    for (const field of Object.keys(fields[table].may ?? {})) {
      const bare = withAt<object>(rows[table], field, absent);
      expect(isSound(table, bare), field).toBe(true);
      expect(sift(table, bare), field).toEqual({ row: bare, bad: [] });
    }
  });

test("a lap in which one field cannot be right goes aside by itself, naming its run, and the others stay", () => {
  const others = [withAt(wholeLap, "id", idAt(91)), withAt(wholeLap, "id", idAt(92))];
  const [first, last] = others;
  for (const { field, value, why } of wrongValues(lapFields)) {
    const bad = withAt(wholeLap, field, value);
    const run = { ...wholeRows.runs, laps: [first, bad, last] };
    expect(isSound("runs", run), `${field} ${String(value)}`).toBe(false);
    const aside = asideRow("laps", { ...bad, runId: idAt(9) }, why, newestSchema);
    expect(sift("runs", run), `${field} ${String(value)}`).toEqual({
      row: { ...wholeRows.runs, laps: others },
      bad: [{ table: "laps", id: `${idAt(9)} 1`, key: idAt(9), aside }],
    });
  }
  for (const field of Object.keys(lapFields.may ?? {}))
    expect(isSound("runs", { ...wholeRows.runs, laps: [withAt(wholeLap, field, absent)] }), field).toBe(true);
});

test("a lap's time and its decimals stand together, or neither does", () => {
  const why = "decimals: they stand where a time stands, and only there";
  const sifted = (lap: object) => sift("runs", { ...wholeRows.runs, laps: [lap] });
  for (const field of ["ms", "decimals"])
    expect(sifted(withAt(wholeLap, field, absent)).bad).toMatchObject([{ aside: { why } }]);
  expect(sifted(withAt(withAt(wholeLap, "ms", absent), "decimals", absent)).bad).toEqual([]);
  for (const [field, [words, ...values]] of Object.entries({ ms: time, decimals }))
    for (const value of values)
      expect(sifted(withAt(wholeLap, field, value)).bad).toMatchObject([
        { aside: { why: `${field}: ${words}` } },
      ]);
});

test("a lap that is no row at all goes aside as the value it is", () => {
  for (const lap of [null, 7, "x"])
    expect(sift("runs", { ...wholeRows.runs, laps: [lap] })).toEqual({
      row: { ...wholeRows.runs, laps: [] },
      bad: [
        {
          table: "laps",
          id: `${idAt(9)} 0`,
          key: idAt(9),
          aside: asideRow("laps", { value: lap, runId: idAt(9) }, "not a row", newestSchema),
        },
      ],
    });
});

test("what is no row at all is sifted out as the value it is", () => {
  for (const value of [null, 7, "x"])
    expect(sift("cars", value)).toEqual({
      row: undefined,
      bad: [
        {
          table: "cars",
          id: "undefined",
          key: undefined,
          aside: asideRow("cars", { value }, "not a row", newestSchema),
        },
      ],
    });
});

test("the ends of what can be drawn are sound", () => {
  const ends = (table: Sifted, field: string, ...values: readonly unknown[]) => {
    for (const value of values)
      expect(isSound(table, withAt<object>(rows[table], field, value)), `${field} ${String(value)}`).toBe(
        true,
      );
  };
  ends("references", "ms", 1, 99 * 3_600_000);
  ends("references", "decimals", 0, 3);
  ends("preferences", "dayStartsAt", 0, 23);
  ends("sessions", "date", "1900-01-01", "2024-02-29", "2199-12-31");
  ends("sessions", "startedAt", Date.parse("0001-01-03"), Date.parse("9999-12-29"));
  ends("runs", "lapsDriven", 0);
  ends("runs", "fuelLitres", 0);
  ends("digests", "digest", {}, []);
});

for (const table of tableNames)
  test(`whatever the checker of files takes into ${table} can be drawn`, () => {
    for (const [field, { takes }] of Object.entries(fieldLimits[table]))
      for (const value of takes)
        expect(
          isSound(table, withAt<object>(wholeRows[table], field, value)),
          `${field} ${String(value)}`,
        ).toBe(true);
  });

test("stamps that cannot be right are taken out of a row or a lap, and nothing else is", () => {
  for (const stamps of [5, "x", null, {}, [Number.NaN], [1, "2"]])
    for (const field of ["had", "disproved"]) {
      const car = withAt(wholeRows.cars, field, stamps);
      expect(isSound("cars", car), `${field} ${String(stamps)}`).toBe(false);
      expect(sift("cars", car)).toEqual({ row: withAt(wholeRows.cars, field, absent), bad: [] });
      const run = withAt(wholeRows.runs, `laps.0.${field}`, stamps);
      expect(isSound("runs", run), `${field} ${String(stamps)}`).toBe(false);
      expect(sift("runs", run)).toEqual({ row: withAt(wholeRows.runs, `laps.0.${field}`, absent), bad: [] });
    }
  const bare = withAt(withAt(wholeRows.cars, "had", absent), "disproved", absent);
  expect(Object.keys(sift("cars", bare).row as object)).toEqual(Object.keys(bare));
});
