import { expect, test } from "vitest";
import { noRows, type Run, type Session } from "#domain";
import { sessionsTable } from "#files";

test("the seconds of a best that was worked out are those of the time beside them, never rounded up", () => {
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
    laps: [{ ...stamps, id: "l", n: 1, ms: 84_580, decimals: 0, source: "typed", remarks: [] }],
  };
  const [, row] = sessionsTable({ ...noRows, sessions: [session], runs: [run] });
  expect(row?.slice(-3)).toEqual([{ figures: "1:24" }, { figures: "84" }, ""]);
});
