import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { idMaker } from "#db";
import type { Run, Session } from "#domain";
import {
  readLaps,
  readTable,
  type TableForm,
  type TableSession,
  tableSessions,
  type WholeTable,
} from "#files";
import { checkRow } from "../../../src/db/checks/checkRow.ts";

const folder = "test/fixtures/tables/";
const texts = readdirSync(folder)
  .filter((name) => !name.startsWith("utf16"))
  .map((name) => readFileSync(folder + name, "latin1"));
const pieces = [
  '"',
  '""',
  ",",
  ";",
  "\t",
  "\r\n",
  "\r",
  "\n",
  "'",
  "=",
  "-",
  "\uFEFF",
  "\0",
  "\uD800",
  "\u202E",
  "9999999999999999999999",
  "1e5",
  "0x1F",
  "NaN",
  "Infinity",
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "prototype",
  "1:75.0",
  "0:00.000",
  "99:59:59.999",
  "2026-02-30",
  "0000-00-00",
  "31/12/9999",
  "2026-10-14T19:05:00+99:99",
  "1,234",
  "1.234.567,8",
  "off@0",
  "f@5 c",
  "sector 1",
  "sector 99",
  "s2",
  "lap time",
  "date",
  "zone",
  "Europe/Nowhere",
  "guest",
  "fuel",
  "x".repeat(500),
];
const time = 1_758_000_000_123;

/** One damage: at a share of the text, so many signs are replaced, doubled or taken out. */
const damage = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  length: fc.integer({ min: 0, max: 12 }),
  piece: fc.constantFrom(...pieces),
  kind: fc.constantFrom("put in", "put in", "take out", "replace", "double"),
});
type Damage = typeof damage extends fc.Arbitrary<infer T> ? T : never;

function damaged(text: string, { at, length, piece, kind }: Damage): string {
  const from = Math.floor(at * text.length);
  const to = from + length;
  if (kind === "put in") return text.slice(0, from) + piece + text.slice(from);
  if (kind === "take out") return text.slice(0, from) + text.slice(to);
  if (kind === "replace") return text.slice(0, from) + piece + text.slice(to);
  return text.slice(0, to) + text.slice(from, to) + text.slice(to);
}

const newId = idMaker(() => time);
const stamps = { createdAt: 1, updatedAt: 1 };

/** Everything the book would be handed for these sessions, checked row by row. */
function checksOf(sessions: readonly TableSession[]) {
  return sessions.flatMap(({ id, runs, car, track, layout, sectors: _, ...about }) => {
    const session: Session = { note: "", focus: "free", ...about, id, comboId: newId(), ...stamps };
    const { comboId, startedAt } = session;
    const rows = runs.map(
      (run, index): Run => ({
        ...run.settings,
        ...stamps,
        id: newId(),
        sessionId: id,
        comboId,
        n: index + 1,
        startedAt,
        laps: run.laps.map(({ lap }, place) => ({ ...lap, ...stamps, id: newId(), n: place + 1 })),
      }),
    );
    return [
      checkRow("sessions", session),
      ...rows.map((row) => checkRow("runs", row)),
      checkRow("cars", { id: newId(), name: car, ...stamps }),
      checkRow("tracks", { id: newId(), name: track, ...stamps }),
      checkRow("layouts", { id: newId(), trackId: newId(), name: layout, corners: [], ...stamps }),
    ];
  });
}

test("of 10,000 damaged tables none throws, none gives a row the book refuses, none reaches the prototype", () => {
  const own = Object.getOwnPropertyNames(Object.prototype).join();
  let laps = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...texts),
      fc.array(damage, { minLength: 1, maxLength: 6 }),
      fc.constantFrom<Partial<TableForm>[]>({}, { dateOrder: "day" }, { decimal: ",", dateOrder: "month" }),
      fc.constantFrom<WholeTable[]>({}, { car: "club hatch", track: "Varnholt Ring", date: "2026-10-14" }),
      (text, all, said, whole) => {
        const table = readTable(all.reduce(damaged, text), said, {
          cars: ["club hatch"],
          tracks: ["Varnholt Ring"],
        });
        const read = readLaps(table, whole, "2026-11-25");
        expect(read.laps.length + read.unread.length).toBe(table.rows.length);
        laps += read.laps.length;
        const { sessions } = tableSessions(read.laps, { zone: "Europe/Berlin", dayStartsAt: 4, newId });
        expect(checksOf(sessions).filter(({ ok }) => !ok)).toEqual([]);
      },
    ),
    { seed: 20_261_125, numRuns: 10_000 },
  );
  // The damage leaves enough to read: a reader that refuses everything would pass the rest.
  expect(laps).toBeGreaterThan(5_000);
  expect(Object.getOwnPropertyNames(Object.prototype).join()).toBe(own);
}, 600_000);
