import { expect, test } from "vitest";
import { type Figure, type Forecast, known, unknown } from "#domain";
import { type JudgedForecast, ownRecord } from "#stats";

let made = 0;
const judged = (
  fields: Partial<Forecast>,
  outcome: Figure<boolean> = known(true),
  target?: JudgedForecast["target"],
): JudgedForecast => {
  made += 1;
  const row = { id: `f${made}`, createdAt: made, updatedAt: made, targetId: "t", comboId: "c", method: "m" };
  const said = { madeOn: "2026-01-10", by: "2026-02-01", chance: 0.5, kind: "best", value: 83_000 } as const;
  return { forecast: { ...row, ...said, ...fields }, outcome, target };
};
const open = unknown({ because: "date to come" });

test("forecasts stand by target with its date, oldest first; what came due first, the latest date first, then what is to come", () => {
  const { targets } = ownRecord([
    judged({ madeOn: "2026-01-12", createdAt: 9000, chance: 0.7 }),
    judged({ madeOn: "2026-01-10", createdAt: 8000, chance: 0.3 }),
    judged({ targetId: "other", by: "2026-03-05", madeOn: "2026-01-14", createdAt: 9500 }, open),
    judged({ by: "2026-03-01", madeOn: "2026-01-11", createdAt: 8500 }, open),
    judged({ by: "2026-02-02", createdAt: 8600 }, unknown({ because: "page turned before its date" })),
  ]);
  expect(targets.map(({ by, said }) => [by, said.map(({ chance }) => chance)])).toEqual([
    ["2026-02-02", [0.5]],
    ["2026-02-01", [0.3, 0.7]],
    ["2026-03-01", [0.5]],
    ["2026-03-05", [0.5]],
  ]);
});

test("a target of another value is another one, and where its own figures are not kept the target's stand for them", () => {
  const { value: _, kind: __, ...old } = judged({}).forecast;
  const target = { kind: "meanOf", value: 84_000, laps: 5 } as const;
  const { targets } = ownRecord([
    judged({ value: 82_500, madeOn: "2026-01-12" }),
    judged({ value: 83_000 }),
    { forecast: { ...old, id: "old", madeOn: "2026-01-09" }, outcome: open, target },
    { forecast: { ...old, id: "lost", madeOn: "2026-01-08" }, outcome: open, target: undefined },
  ]);
  expect(targets.map(({ wanted }) => wanted)).toEqual([
    { kind: "best", value: 82_500 },
    { kind: "best", value: 83_000 },
    undefined,
    target,
  ]);
});

test("what two devices said of a target after one session counts once, the first of it", () => {
  const { targets, record } = ownRecord([
    judged({ madeAfter: "s", createdAt: 5000, chance: 0.9 }),
    judged({ madeAfter: "s", createdAt: 4000, chance: 0.5 }),
    judged({ madeAfter: "later", createdAt: 6000, chance: 0.5 }),
  ]);
  expect(targets[0]?.said).toHaveLength(2);
  // Twice (1 − ½)².
  expect(record).toMatchObject({ count: 2, score: 0.25 });
});

test("only what was scored is counted", () => {
  const { record, against } = ownRecord([judged({}, open), judged({ by: "2026-01-20" }, known(false))]);
  expect(record).toMatchObject({ count: 1, reached: 0 });
  expect(against).toEqual({ known: false, reason: { needs: 5, of: "target that came due", has: 1 } });
  expect(ownRecord([judged({}, open)]).record).toBeUndefined();
});
