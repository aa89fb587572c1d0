import type { DriverKind } from "../../demo-data/drivers.ts";
import type { Horizon } from "./simulate.ts";

/**
 * What the first version of the forecasts reached on drivers of the same six kinds, as it was measured then (50 drivers a
 * kind, other seeds): practice curves instead of the level model. By number of past sessions; what is missing was not measured.
 */
export const firstVersion: {
  readonly brier: Readonly<Record<Horizon, Readonly<Record<number, number>>>>;
  /** Share of medians in the 90 % band, 5 to 12 sessions ahead. */
  readonly bands: Readonly<Partial<Record<DriverKind, Readonly<Record<number, number>>>>>;
  /** Of targets said one half, 4 sessions ahead after 20: the share that was reached. */
  readonly half: Readonly<Record<DriverKind, number>>;
} = {
  brier: {
    4: { 3: 0.77, 5: 0.8, 12: 0.87, 20: 0.65, 40: 1.23 },
    12: { 3: 0.86, 5: 0.82, 12: 0.71, 20: 0.52, 40: 0.88 },
  },
  bands: {
    linear: { 3: 0.96, 5: 0.93, 12: 0.85, 20: 0.81, 40: 0.78 },
    slower: { 5: 0.7, 12: 0.65, 20: 0.52, 40: 0.43 },
  },
  half: { flat: 0.4, exponential: 0.36, power: 0.34, linear: 0.84, stopped: 0.12, slower: 0.06 },
};
