import { expect, test } from "vitest";
import { median } from "#numbers";
import { stepAtChange } from "#stats";
import { chanceFrom, type DriverKind, drawDriver, driveSession } from "../../demo-data/drivers.ts";

const sessions = 14;
const change = 7;

/** The step as read from a simulated driver whose level shifts by a share of the base at the change. */
function readStep(kind: DriverKind, share: number, seed: number) {
  const chance = chanceFrom(seed);
  const driver = drawDriver(kind, chance);
  const history = Array.from({ length: sessions }, (_, n) => {
    const times = driveSession(
      driver,
      { lapsBefore: 20 * n, laps: 20, extra: n < change ? 0 : share },
      chance,
    );
    return { lapsBefore: 20 * n, laps: 20, medianMs: median(times) ?? 0, bestMs: Math.min(...times) };
  });
  const step = stepAtChange({ history, afterSession: change });
  if (!step.known) throw new Error(JSON.stringify(step.reason));
  return { ...step.value, truth: share * driver.baseMs };
}

const trials = (share: number) =>
  (["flat", "exponential", "power"] as const).flatMap((kind, k) =>
    Array.from({ length: 50 }, (_, n) => readStep(kind, share, 7000 + 100 * k + n)),
  );

test.each([{ share: 0 }, { share: -0.01 }])(
  "nine in ten intervals hold a true step of $share",
  ({ share }) => {
    const held = trials(share).filter(({ low, high, truth }) => low <= truth && truth <= high).length;
    expect(held / 150).toBeGreaterThanOrEqual(0.85);
  },
);

test("a step of 1 % is mostly told from none, and none is seldom told as one", () => {
  const claims = (share: number) => trials(share).filter(({ high }) => high < 0).length / 150;
  expect(claims(-0.01)).toBeGreaterThan(0.5);
  expect(claims(0)).toBeLessThanOrEqual(0.1);
});

test("drivers who get slower are seldom told a step where there is none", () => {
  const claimed = Array.from({ length: 100 }, (_, n) => readStep("slower", 0, 8000 + n)).filter(
    ({ low, high }) => low > 0 || high < 0,
  );
  expect(claimed.length / 100).toBeLessThanOrEqual(0.15);
});
