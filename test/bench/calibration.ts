import { simulate, type Trial } from "../calibration/simulate.ts";
import { table } from "./calibrationTable.ts";

/** A loss of 1 % after the last session, halving every 20 laps; sessions have 22 laps in the mean. */
const breakLoss = (n: number, sessions: number) =>
  n < sessions ? 0 : 0.01 * 2 ** (-(22 * (n - sessions) + 11) / 20);
const gain = (n: number) => (n >= 6 ? -0.01 : 0);

/** No limit holds for these. */
const stress: readonly (Partial<Trial> & { name: string; sessions: number })[] = [
  { name: "12 sessions, targets for the median", sessions: 12, targets: "median" },
  {
    name: "a break after 12 sessions, marked",
    sessions: 12,
    extra: breakLoss,
    events: (sessions) => [{ kind: "break", afterSession: sessions }],
  },
  { name: "the same break, not marked", sessions: 12, extra: breakLoss },
  { name: "a gain of 1 % at session 7 of 12, not marked", sessions: 12, step: gain },
  {
    name: "the same, marked as a step",
    sessions: 12,
    step: gain,
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

/**
 * Prints how true what the level model says is, by kind of driver, on seeds that its priors were not chosen by.
 * @param drivers of each kind; of the stress cases a quarter as many
 */
export function calibration(drivers: number, seed: number, write: (text: string) => void): void {
  const usual = { drivers, targetsEach: 8, draws: 500, seed };
  for (const sessions of [3, 5, 8, 12, 20, 40])
    write(table(`${sessions} sessions`, sessions, simulate({ ...usual, sessions })));
  for (const { name, ...trial } of stress)
    write(table(name, Number.NaN, simulate({ ...usual, drivers: Math.ceil(drivers / 4), ...trial })));
}
