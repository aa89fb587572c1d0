import { expect, test } from "vitest";
import type { DrillCount } from "#domain";
import { drillWeeks } from "#stats";

const traction = (tries: number, good: number, corner?: number): DrillCount => ({
  ...{ drill: "traction", tries, good },
  ...(corner !== undefined && { corner }),
});

test("tries are counted week by week for each drill and corner, the one counted last first", () => {
  const found = drillWeeks([
    { date: "2026-03-18", counts: [traction(10, 9, 5)] },
    { date: "2026-03-10", counts: [traction(10, 6, 5), { drill: "kerb", tries: 4, good: 4 }] },
    { date: "2026-03-12", counts: [traction(10, 8, 5)] },
    { date: "2026-03-13", counts: [traction(0, 0, 6)] },
  ]);
  expect(found).toMatchObject([
    {
      ...{ drill: "traction", corner: 5, all: { good: 23, tries: 30 } },
      weeks: [
        { week: "2026-W11", good: 14, tries: 20, share: 0.7 },
        { week: "2026-W12", good: 9, tries: 10, share: 0.9 },
      ],
    },
    { drill: "kerb", corner: undefined, all: { good: 4, tries: 4 } },
  ]);
});

test("each share has Wilson's 90 % interval", () => {
  const [one] = drillWeeks([{ date: "2026-03-10", counts: [traction(20, 0)] }]);
  // scipy 1.10.1, binomtest().proportion_ci(0.9, method="wilson"): test/reference/wilson-score-interval, 0 of 20.
  expect(one?.all).toMatchObject({ share: 0, low: 0 });
  expect(one?.all.high).toBeCloseTo(0.119158, 6);
});
