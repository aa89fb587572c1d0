import type { Figure, Id, Run } from "#domain";
import type { Choices } from "../laps/choices.ts";
import { seedOf } from "../random/seedOf.ts";
import { type LongRunTrend, longRunTrend } from "./longRunTrend.ts";
import { lastForTime, raceBasis } from "./raceBasis.ts";
import { type RaceDistance, raceDistance } from "./raceDistance.ts";

/** A race as it is asked about: laps or minutes, and a mean lap to beat. */
export type RaceLength = { readonly rivalMeanMs?: number | undefined } & (
  | { readonly count: number; readonly minutes?: never }
  | { readonly minutes: number; readonly count?: never }
);

export interface RaceOutlookQuestion {
  readonly comboId: Id;
  /** Of the present page, the newest first. */
  readonly runs: readonly Run[];
  readonly choices: Choices;
  readonly race: RaceLength;
}

/** A race to come, as far as the laps so far tell. */
export interface RaceOutlook {
  readonly distance: Figure<RaceDistance>;
  readonly trend: Figure<LongRunTrend>;
  /** What it rests on. */
  readonly basis: { readonly kind: "race" | "pace"; readonly runs: number; readonly laps: number };
}

/** A race distance, and the pace over a long run from the last runs for time of either kind. The seed comes from the combo. Our methods, §4 and §10. */
export function raceOutlook({ comboId, runs, choices, race }: RaceOutlookQuestion): RaceOutlook {
  const basis = raceBasis(runs);
  const { count, minutes, rivalMeanMs } = race;
  return {
    distance: raceDistance({
      ...{ laps: basis.laps, seed: seedOf(comboId) },
      ...(count !== undefined && { count }),
      ...(minutes !== undefined && { minutes }),
      ...(rivalMeanMs !== undefined && { rivalMeanMs }),
    }),
    trend: longRunTrend(lastForTime(runs), choices),
    basis: { kind: basis.kind, runs: basis.runs.length, laps: basis.laps.length },
  };
}
