import { bench, describe } from "vitest";
import { forecastTarget } from "#stats";
import { chanceFrom, drawDriver, driveSession } from "../../demo-data/drivers.ts";
import { simulate, type Trial } from "../calibration/simulate.ts";
import { tableLine } from "../calibration/table.ts";

const usual = { drivers: 120, targetsEach: 4, draws: 400, seed: 4201 };
/** A loss of 1 % after the last session, halving every 20 laps; sessions have 22 laps in the mean. */
const breakLoss = (n: number, sessions: number) =>
  n < sessions ? 0 : 0.01 * 2 ** (-(22 * (n - sessions) + 11) / 20);

const trials: readonly (Partial<Trial> & { name: string; sessions: number })[] = [
  ...[3, 5, 8, 12, 20].map((sessions) => ({ name: `${sessions} sessions`, sessions })),
  { name: "12 sessions, targets for the median", sessions: 12, targets: "median" },
  {
    name: "a break after 12 sessions, marked",
    sessions: 12,
    extra: breakLoss,
    events: (sessions) => [{ kind: "break", afterSession: sessions }],
  },
  { name: "the same break, not marked", sessions: 12, extra: breakLoss },
  {
    name: "a gain of 1 % at session 7 of 12, not marked",
    sessions: 12,
    extra: (n) => (n >= 6 ? -0.01 : 0),
  },
  {
    name: "the same, marked as a step",
    sessions: 12,
    extra: (n) => (n >= 6 ? -0.01 : 0),
    events: () => [{ kind: "step", afterSession: 6 }],
  },
  { name: "60 sessions", sessions: 60 },
  {
    name: "5 sessions, power law that is steep for a few laps and hardly moves after them",
    sessions: 5,
    kinds: ["power"],
    adjust: (driver) => ({
      ...driver,
      paceOfLearning: driver.paceOfLearning / 10,
      exponent: driver.exponent / 2,
    }),
  },
  { name: "12 sessions of three laps", sessions: 12, laps: [3, 3] },
];

const lines = trials.map(({ name, ...trial }) => tableLine(name, simulate({ ...usual, ...trial })));
process.stdout.write(
  `\nForecasts on simulated drivers, stress cases included (no limit holds for these):\n${lines.join("\n")}\n\n`,
);

describe("forecast of a target, 2,000 draws", () => {
  const chance = chanceFrom(99);
  const driver = drawDriver("exponential", chance);
  for (const sessions of [8, 60]) {
    const history = Array.from({ length: sessions }, (_, n) => {
      const times = driveSession(driver, { lapsBefore: 25 * n, laps: 25 }, chance).toSorted((a, b) => a - b);
      return { lapsBefore: 25 * n, laps: 25, medianMs: times[12] ?? 0, bestMs: times[0] ?? 0 };
    });
    const targetMs = 0.99 * Math.min(...history.map(({ bestMs }) => bestMs));
    const future = Array.from({ length: 6 }, () => ({ laps: 25 }));
    bench(`${sessions} sessions behind, 6 ahead`, () => {
      forecastTarget({ history, future, targetMs, kind: "best", seed: 1 });
    });
  }
});
