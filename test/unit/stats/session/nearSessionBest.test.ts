import { expect, it } from "vitest";
import { comboReview, type SessionDigest, sessionDigest } from "#stats";
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
  const { nearTheBest, nearTheBestBefore } = nearOf(evenings, "2026-01-11");
  expect(nearTheBest).toMatchObject({ within: 24, laps: 32 });
  expect(nearTheBestBefore).toMatchObject({ within: 24, laps: 32 });
});

it("sessions of fewer than five clean laps, nearly all near their best, are left out", () => {
  const few = evening(11, [84_000, 84_010, 84_020, 84_030]);
  expect(nearOf([few], "2026-01-11").nearTheBest).toBeUndefined();
  expect(nearOf([evening(10, about(85_000)), few], "2026-01-11").nearTheBest).toMatchObject({ laps: 8 });
});
