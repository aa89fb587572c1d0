import fc from "fast-check";
import { type AllRows, type Lap, noRows, type Run, type Session } from "#domain";

const idOf = (kind: number, n: number) =>
  `00000000-0000-7000-80${String(kind).padStart(2, "0")}-${String(n).padStart(12, "0")}`;
const few = fc.integer({ min: 0, max: 3 });
const when = fc.integer({ min: 1, max: 20 });
const stamps = fc
  .tuple(when, fc.option(when, { nil: undefined }))
  .map(([updatedAt, deletedAt]) => (deletedAt === undefined ? { updatedAt } : { updatedAt, deletedAt }));

const lap: fc.Arbitrary<Lap> = fc.tuple(few, few, stamps).map(([n, ms, stamped]) => ({
  id: idOf(3, n),
  createdAt: 1,
  ...stamped,
  n,
  ms: 80_000 + ms,
  decimals: 3,
  source: "typed",
  remarks: [],
}));

const session: fc.Arbitrary<Session> = fc.tuple(few, few, stamps).map(([n, note, stamped]) => ({
  id: idOf(1, n),
  createdAt: 1,
  ...stamped,
  comboId: idOf(0, 0),
  startedAt: 1,
  isTimeOfDayKnown: true,
  date: "2026-03-10",
  zone: "UTC",
  focus: "free",
  note: `note ${note}`,
}));

const run: fc.Arbitrary<Run> = fc
  .tuple(few, few, stamps, fc.uniqueArray(lap, { selector: ({ id }) => id, maxLength: 3 }))
  .map(([n, note, stamped, laps]) => ({
    id: idOf(2, n),
    createdAt: 1,
    ...stamped,
    sessionId: idOf(1, 0),
    comboId: idOf(0, 0),
    n,
    startedAt: 1,
    kind: "pace",
    effort: "full",
    surface: "dry",
    note: `note ${note}`,
    laps,
  }));

const byId = { selector: ({ id }: { readonly id: string }) => id, maxLength: 4 };

/** A lap stands in one run only. */
function eachLapOnce(runs: readonly Run[]): Run[] {
  const seen = new Set<string>();
  return runs.map((one) => ({
    ...one,
    laps: one.laps.filter(({ id }) => !seen.has(id) && seen.add(id)),
  }));
}

/** Small logbooks that share ids, so that merging them has something to decide. */
export const someRows: fc.Arbitrary<AllRows> = fc
  .tuple(fc.uniqueArray(session, byId), fc.uniqueArray(run, byId))
  .map(([sessions, runs]) => ({ ...noRows, sessions, runs: eachLapOnce(runs) }));
