import { expect, test } from "vitest";
import type { DrillCount, Remark } from "#domain";
import { countedDrills } from "#stats";
import { aRun, aSession, choices } from "../someRows.ts";

const off = (corner: number): readonly Remark[] => [{ kind: "off", corner }];
const count = (corner: number, tries: number, good: number): DrillCount => ({
  drill: "traction",
  ...{ corner, tries, good },
});

/** An evening: a pace run of ten laps, so many of them off at corner 5, and a drill with its count. */
const evening = (day: number, offs: number, drilled?: DrillCount) => {
  const session = aSession(day);
  const laps = Array.from({ length: 10 }, (_, lap) =>
    lap < offs ? { ms: 90_000, remarks: off(5) } : 84_000 + lap,
  );
  const counts = drilled === undefined ? {} : { counts: [drilled] };
  const drill = aRun(2, [{ ms: 95_000, remarks: off(5) }], {
    sessionId: session.id,
    kind: "drill",
    ...counts,
  });
  return { session, runs: [aRun(1, laps, { sessionId: session.id }), ...(drilled ? [drill] : [])] };
};

const sessions = [
  evening(0, 3),
  evening(2, 2),
  evening(4, 4, count(5, 10, 4)),
  evening(6, 1, count(5, 10, 7)),
  evening(8, 0, count(9, 5, 5)),
];
const asked = { history: [], preferences: choices, since: "2026-01-01" } as const;
const ask = (corner?: number, since = "2026-01-01") => countedDrills({ ...asked, sessions, corner, since });

test("without a corner all drills are told, and nothing of what followed", () => {
  const { drills, followed } = ask();
  expect(drills.map(({ corner, all: { good, tries } }) => [corner, good, tries])).toEqual([
    [9, 5, 5],
    [5, 11, 20],
  ]);
  expect(followed).toBeUndefined();
});

test("mistakes at the corner are counted before the first drill and after it, drills and that evening on neither side", () => {
  const { drills, followed } = ask(5);
  expect(drills).toHaveLength(1);
  expect(followed).toMatchObject({
    from: "2026-01-05",
    before: { laps: 20, mistakes: 5 },
    since: { laps: 20, mistakes: 1 },
    level: { known: false },
  });
});

test("a drill counted before the day that is asked from is in nothing, the laps of that time are", () => {
  expect(ask(5, "2026-01-06").followed).toMatchObject({
    from: "2026-01-07",
    before: { laps: 30, mistakes: 9 },
    since: { laps: 10, mistakes: 0 },
  });
});

test("what a guest counted is none of the driver's, and a corner without drills has nothing to follow", () => {
  const guest = sessions.map(({ session, runs }) => ({
    session,
    runs: runs.map((run) => ({ ...run, guest: "Jo" })),
  }));
  expect(countedDrills({ ...asked, sessions: guest, corner: 5 })).toEqual({
    drills: [],
    followed: undefined,
  });
  expect(ask(3)).toEqual({ drills: [], followed: undefined });
});
