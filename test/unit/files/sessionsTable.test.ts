import { expect, test } from "vitest";
import { type Lap, noRows, type Run, type Session } from "#domain";
import { sessionsTable } from "#files";
import { sessionCounts } from "../../../src/screens/data/sessionCounts.ts";

const stamps = { createdAt: 1, updatedAt: 1 };
const session: Session = {
  ...stamps,
  id: "s",
  comboId: "c",
  startedAt: Date.UTC(2026, 9, 14, 18),
  isTimeOfDayKnown: true,
  date: "2026-10-14",
  zone: "UTC",
  focus: "free",
  note: "",
};
const run: Run = {
  ...stamps,
  id: "r",
  sessionId: "s",
  comboId: "c",
  n: 1,
  startedAt: session.startedAt,
  kind: "pace",
  effort: "full",
  surface: "dry",
  note: "",
  laps: [],
};
const lap = (n: number, ms: number, fields: Partial<Lap> = {}): Lap => ({
  ...stamps,
  id: `l${n}`,
  n,
  ms,
  source: "typed",
  remarks: [],
  ...fields,
});
const rowOf = (...runs: readonly Run[]) =>
  sessionsTable({ ...noRows, sessions: [session], runs }, sessionCounts)[1]?.slice(-6);

test("a session's laps, clean laps and best are those of its page: laps not written down count, a lap taken back is no best", () => {
  const written = {
    ...run,
    laps: [
      lap(1, 83_476, { isNotBest: true }),
      lap(2, 83_760),
      lap(3, 90_000, { remarks: [{ kind: "off" }] }),
    ],
  };
  const summary = { ...run, id: "r2", n: 2, summary: { laps: 12, bestMs: 83_900, bestDecimals: 1 } };
  const partly = { ...run, id: "r3", n: 3, lapsDriven: 9, laps: [lap(4, 84_000)] };
  const guest = { ...run, id: "r4", n: 4, guest: "", laps: [lap(5, 80_000)] };
  expect(rowOf(written, summary, partly, guest)).toEqual([
    3,
    3 + 12 + 9,
    2,
    { figures: "1:23.760" },
    { figures: "83.760" },
    "",
  ]);
});

test("the seconds of a best that was worked out are those of the time beside them, never rounded up", () => {
  const tens = { ...run, laps: [lap(1, 84_580, { decimals: 0 })] };
  expect(rowOf(tens)?.slice(-3)).toEqual([{ figures: "1:24" }, { figures: "84" }, ""]);
});
