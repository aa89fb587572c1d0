import { describe, expect, it } from "vitest";
import type { Target } from "#domain";
import { comboReview, figureAt, figureForTarget, type SessionDigest, sessionDigest } from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";
import { aRun, aSession, choices } from "../someRows.ts";

/** Sessions of ten laps, two days apart, in times of so many decimals. */
function sessions(count: number, decimals = 3): SessionDigest[] {
  const step = 10 ** (3 - decimals);
  return Array.from({ length: count }, (_, number) => {
    const laps = Array.from({ length: 10 }, (_, lap) => ({
      ms: Math.floor((84_000 - 60 * number + 80 * normalAt(29, number, lap)) / step) * step,
      decimals,
    }));
    return sessionDigest(aSession(2 * number), [aRun(1, laps, { sessionId: `session ${number}` })], choices);
  });
}
const wanted: Target = {
  id: "target",
  createdAt: 0,
  updatedAt: 0,
  comboId: "combo",
  kind: "median",
  value: 83_000,
  setAt: 0,
  setOn: "2026-01-01",
};
const reviewOf = (digests: readonly SessionDigest[]) =>
  comboReview({
    comboId: "combo",
    digests,
    pages: [],
    period: {},
    today: "2026-02-01",
    targets: [wanted],
    references: [],
    preferences: choices,
  });

describe("the level that stands against a target of a usual lap", () => {
  it.each([2, 5, 12, 20])(
    "is the same hundredth in the form, on Targets and in the week: %i sessions",
    (count) => {
      const review = reviewOf(sessions(count));
      const [state] = review.targets;
      expect(state?.now).toMatchObject({ decimals: 2, isLevel: true });
      expect((state?.now?.value ?? 1) % 10).toBe(0);
      expect(figureAt(review, "median", Number.POSITIVE_INFINITY)).toEqual(state?.now);
      const { left } = state?.progress.known ? state.progress.value : { left: Number.NaN };
      if (state?.progress.known) expect(left).toBe((state.now?.value ?? 0) - wanted.value);
    },
  );

  it("is the usual lap of the last session where no level is known yet, as its laps are known", () => {
    const page = sessions(1, 1);
    const now = figureForTarget(wanted, page, () => undefined);
    expect(now).toEqual({ value: page[0]?.pace.median, decimals: 1 });
  });
});
