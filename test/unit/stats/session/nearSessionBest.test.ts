import { expect, it } from "vitest";
import { comboReview, type SessionDigest, sessionDigest, sessionReport } from "#stats";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

const evening = (day: number, laps: readonly Told[]): SessionDigest =>
  sessionDigest(aSession(day), [aRun(1, laps)], choices);
/** Eight laps, six of them within half a percent of the fastest. */
const about = (ms: number) => [0, 50, 100, 150, 200, 300, 700, 800].map((off) => ms + off);
const nearOf = (digests: readonly SessionDigest[], from: string) =>
  comboReview({
    comboId: "combo",
    digests,
    pages: [],
    period: { from },
    today: "2026-01-20",
    targets: [],
    references: [],
    preferences: choices,
  });

it("a driver who gets faster by a percent an evening is no less near the best than before", () => {
  const evenings = [0, 1, 2, 3, 10, 11, 12, 13].map((day) => evening(day, about(85_000 - 800 * day)));
  const { nearTheBest, before } = nearOf(evenings, "2026-01-11");
  expect(nearTheBest).toMatchObject({ within: 24, laps: 32 });
  expect(before.nearTheBest).toMatchObject({ within: 24, laps: 32 });
});

it("sessions of fewer than five pace laps, nearly all near their best, are left out", () => {
  const few = evening(11, [84_000, 84_010, 84_020, 84_030]);
  expect(nearOf([few], "2026-01-11").nearTheBest).toBeUndefined();
  expect(nearOf([evening(10, about(85_000)), few], "2026-01-11").nearTheBest).toMatchObject({ laps: 8 });
});

it("wet, learning and warm-up laps are not measured against the dry best", () => {
  const runs = [
    aRun(1, [81_000, 81_100], { kind: "warm-up" }),
    aRun(2, about(85_000)),
    aRun(3, about(92_000), { surface: "wet" }),
    aRun(4, about(85_010), { effort: "learning" }),
  ];
  const session = aSession(10);
  const { nearTheBest } = nearOf([sessionDigest(session, runs, choices)], "2026-01-11");
  expect(nearTheBest).toMatchObject({ within: 6, laps: 8 });
  expect(sessionReport({ session, runs, preferences: choices }).nearTheBest).toEqual(nearTheBest);
});

it("a lap taken back as a best sets no mark for the others", () => {
  const towed = { ms: 83_000, isNotBest: true } as const;
  expect(nearOf([evening(10, [...about(85_000), towed])], "2026-01-11").nearTheBest).toMatchObject({
    within: 6,
    laps: 8,
  });
});
