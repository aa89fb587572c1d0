import fc from "fast-check";
import { expect, test } from "vitest";
import { idMaker } from "#db";
import { type AllRows, type Lap, noRows, type Run, type Session } from "#domain";
import { type CsvStyle, lapsTable, readLaps, readTable, tableSessions, writeCsv } from "#files";
import { newPart } from "../../../src/db/importedSession.ts";
import { aLine, aPlace, type StoredLap, typedLaps } from "../../support/typedLaps.ts";

const idOf = (kind: number, n: number) =>
  `00000000-0000-7000-80${String(kind).padStart(2, "0")}-${String(n).padStart(12, "0")}`;
const stamps = (kind: number, n: number) => ({ id: idOf(kind, n), createdAt: 1, updatedAt: 1 });

const maybe = <T>(from: fc.Arbitrary<T>) => fc.option(from, { nil: undefined });
const hard = fc.string({
  unit: fc.constantFrom("=", "-", "@", "'", '"', ",", ";", "\t", "\n", "é", "走", "1", " ", "a"),
  maxLength: 12,
});
/** Texts as the app keeps them: with something in them, no blank at their ends. */
const text = hard.map((typed) => `x${typed}x`);
const present = <T extends object>(fields: T) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

const change = fc.record({
  note: maybe(text),
  source: maybe(fc.constantFrom("typed", "memory", "imported")),
  isNotBest: maybe(fc.constant(true)),
  isOdd: maybe(fc.constant(true)),
});
/** Laps as typed; some were changed since, in what no line says. */
const typed = fc
  .tuple(fc.array(aLine, { minLength: 1, maxLength: 6 }), aPlace, fc.array(change, { maxLength: 3 }))
  .map(([all, where, changes]) =>
    typedLaps(all, where).map((one, index) => ({ ...one, ...present(changes[index] ?? {}) }) as StoredLap),
  )
  .filter((laps) => laps.length > 0);
/** Words that mean something in some column, and are as good a text or a name as any. */
const sentinel = fc.constantFrom(
  "No",
  "no",
  "0",
  "1",
  "n",
  "x",
  "Yes",
  "yes",
  "false",
  "none",
  "no time",
  "-",
  "UTC",
);
const words = fc.oneof(text, sentinel);
const run = fc
  .tuple(
    typed,
    fc.constantFrom("pace", "race"),
    fc.record({ tyres: maybe(words), setup: maybe(words), assists: maybe(words) }),
    maybe(fc.oneof(fc.constant(""), fc.constant("g".repeat(400)), words)),
    maybe(fc.double({ min: 0, max: 400, noNaN: true })),
    fc.oneof(fc.constant(""), words),
  )
  .map(([laps, kind, texts, guest, fuel, note]) => ({
    laps,
    settings: {
      kind,
      effort: "full",
      surface: "damp",
      note,
      ...present({
        ...texts,
        guest,
        fuelLitres: fuel === undefined ? undefined : Number(fuel.toFixed(6)),
      }),
    },
  }));
const session = fc
  .tuple(
    fc.array(run, { minLength: 1, maxLength: 3 }),
    fc.integer({ min: 0, max: 2 }),
    maybe(fc.integer({ min: 0, max: 23 })),
    words,
    maybe(words),
  )
  .map(([runs, day, hour, note, conditions]) => ({ runs, day, hour, note, conditions }));

type Made = typeof session extends fc.Arbitrary<infer T> ? T : never;

function rowsOf(sessions: readonly Made[]): AllRows {
  const combo = { ...stamps(4, 1), carId: idOf(1, 1), layoutId: idOf(3, 1) };
  const made = sessions.map(({ runs, day, hour, note, conditions }, n) => {
    const startedAt = Date.UTC(2026, 9, 10 + day, 10 + (hour ?? 0)) + n;
    const row: Session = {
      ...stamps(5, n),
      comboId: combo.id,
      startedAt,
      isTimeOfDayKnown: hour !== undefined,
      date: new Date(startedAt - 4 * 3_600_000).toISOString().slice(0, 10),
      zone: "UTC",
      focus: "kerbs",
      note,
      ...present({ conditions }),
    };
    return {
      row,
      runs: runs.map(({ laps, settings }, place) => ({
        ...stamps(6, n * 10 + place),
        sessionId: row.id,
        comboId: combo.id,
        n: place + 1,
        startedAt,
        ...settings,
        laps: laps.map((one, index) => ({
          ...stamps(7, n * 1000 + place * 100 + index),
          n: index + 1,
          ...one,
        })) as Lap[],
      })) as Run[],
    };
  });
  return {
    ...noRows,
    cars: [{ ...stamps(1, 1), name: "=club, hatch" }],
    tracks: [{ ...stamps(2, 1), name: "Varnholt, Ring" }],
    layouts: [{ ...stamps(3, 1), trackId: idOf(2, 1), name: "", corners: [] }],
    combos: [combo],
    sessions: made.map(({ row }) => row),
    runs: made.flatMap(({ runs }) => runs),
  };
}

const styles: readonly CsvStyle[] = [
  {},
  { delimiter: ";", decimal: "," },
  { delimiter: "\t", hasMark: false },
  { delimiter: ",", decimal: "," },
];

test("exported and imported again, laps are the same, in whatever style", () => {
  fc.assert(
    fc.property(
      fc.array(session, { minLength: 1, maxLength: 4 }),
      fc.constantFrom(...styles),
      (sessions, style) => {
        const rows = rowsOf(sessions);
        const file = writeCsv(lapsTable(rows), style);
        const table = readTable(file, {}, { cars: [], tracks: [] });
        const read = readLaps(table, {}, "2026-12-31");
        expect(read.unread).toEqual([]);
        const back = tableSessions(read.laps, {
          zone: "Asia/Tokyo",
          dayStartsAt: 4,
          newId: idMaker(() => 1_000),
        });
        expect(back.repeated).toBe(0);
        const sorted = rows.sessions.toSorted((a, b) => a.startedAt - b.startedAt);
        const laps = (id: string) => rows.runs.filter((one) => one.sessionId === id);
        const plain = back.sessions.map((one) => [
          one.date,
          one.zone,
          one.note,
          one.conditions,
          one.car,
          one.track,
          one.runs.map((r) => [r.settings, r.laps.map((l) => l.lap)]),
        ]);
        const asked = sorted.map((one) => [
          one.date,
          one.zone,
          one.note,
          one.conditions,
          "=club, hatch",
          "Varnholt, Ring",
          laps(one.id).map(
            ({ laps: own, kind, effort, surface, note, tyres, setup, assists, guest, fuelLitres }) => [
              { kind, effort, surface, note, ...present({ tyres, setup, assists, guest, fuelLitres }) },
              own.map(({ id: _, createdAt: __, updatedAt: ___, n: ____, ...fields }) => fields),
            ],
          ),
        ]);
        const byText = (list: unknown[]) => list.map((one) => JSON.stringify(one, keysInOrder)).sort();
        expect(byText(plain)).toEqual(byText(asked));
        const all = rows.runs.flatMap((one) => one.laps);
        const there = [{ id: "there", laps: all.map(({ ms, decimals }) => present({ ms, decimals })) }];
        const part = newPart(
          { ...back.sessions[0], runs: back.sessions.flatMap(({ runs }) => runs) } as never,
          there,
        );
        expect([part.known, part.runs.flat()]).toEqual([all.length, []]);
      },
    ),
    { seed: 11, numRuns: 200 },
  );
});

const keysInOrder = (_: string, value: unknown) =>
  typeof value === "object" && value !== null && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
    : value;
