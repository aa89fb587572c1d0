import { expect, test } from "vitest";
import { median } from "#numbers";
import { stepAtChange } from "#stats";
import {
  type Chance,
  chanceFrom,
  type Driver,
  type DriverKind,
  drawDriver,
  driveSession,
} from "../../demo-data/drivers.ts";

const sessions = 14;
const change = 7;

function readStep(kind: DriverKind, share: number, seed: number) {
  const chance = chanceFrom(seed);
  return stepOf(drawDriver(kind, chance), { before: change, sessions, share }, chance);
}

/** The step as read from a simulated driver whose level shifts by a share of the base at the change. */
function stepOf(
  driver: Driver,
  { before, sessions, share }: { readonly before: number; readonly sessions: number; readonly share: number },
  chance: Chance,
) {
  const history = Array.from({ length: sessions }, (_, n) => {
    const times = driveSession(
      driver,
      { lapsBefore: 20 * n, laps: 20, extra: n < before ? 0 : share },
      chance,
    );
    return { lapsBefore: 20 * n, laps: 20, medianMs: median(times) ?? 0, bestMs: Math.min(...times) };
  });
  const step = stepAtChange({ history, afterSession: before });
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

/** More of them for a closer look: `LAP_LEDGER_DRIVERS=600`. */
const drivers = Number(process.env["LAP_LEDGER_DRIVERS"] ?? 60);
/** One in twenty on either side is the rate asked for; this is the most that is borne, and by chance in so many drivers. */
const most = (share: number, count: number) => share + 2 * Math.sqrt((share * (1 - share)) / count);
const bearable = 0.15;

/** A driver who goes on getting slower, or, as steadily, faster: 0.5 to 5 % over 600 to 2,000 laps. */
const steadily = {
  slower: (chance: Chance) => drawDriver("slower", chance),
  faster: (chance: Chance): Driver => ({ ...drawDriver("slower", chance), kind: "linear" }),
};

for (const way of ["slower", "faster"] as const)
  test(`drivers who get ${way} steadily are seldom told a step where there is none, with few sessions and with many`, () => {
    const claimed = [2, 4, 7, 12].map((each, row) => {
      const found = Array.from({ length: drivers }, (_, n) => {
        const chance = chanceFrom(20_011 + 7919 * (n + 1) + 101 * row);
        return stepOf(steadily[way](chance), { before: each, sessions: 2 * each, share: 0 }, chance);
      });
      return found.filter(({ low, high }) => low > 0 || high < 0).length;
    });
    for (const count of claimed) expect(count / drivers).toBeLessThanOrEqual(most(bearable, drivers));
    const all = claimed.reduce((sum, count) => sum + count, 0) / (4 * drivers);
    expect(all).toBeLessThanOrEqual(most(bearable, 4 * drivers));
  });
