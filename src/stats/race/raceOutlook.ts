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
  /** How far the level has moved since a session, ms; undefined where it is not known. */
  readonly moved?: ((sessionId: Id) => number | undefined) | undefined;
}

/** A race to come, as far as the laps so far tell. */
export interface RaceOutlook {
  readonly distance: Figure<RaceDistance>;
  readonly trend: Figure<LongRunTrend>;
  /** What it rests on. */
  readonly basis: {
    readonly kind: "race" | "pace";
    readonly runs: number;
    readonly laps: number;
    /** Laps of some of the runs are moved by as much as the level has since. */
    readonly isMoved?: true;
  };
}

/** A race distance, and the pace over a long run from the last runs for time of either kind. The seed comes from the combo. Our methods, §4 and §10. */
export function raceOutlook({ comboId, runs, choices, race, moved }: RaceOutlookQuestion): RaceOutlook {
  const basis = raceBasis(runs);
  const { count, minutes, rivalMeanMs } = race;
  // A lap of weeks ago is one of a driver who has changed since.
  const shifts = new Map(basis.runs.map(({ id, sessionId }) => [id, Math.round(moved?.(sessionId) ?? 0)]));
  const isMoved = [...shifts.values()].some((ms) => ms !== 0);
  const laps = basis.laps.map((lap) =>
    typeof lap === "number" || lap.ms === undefined
      ? lap
      : { ...lap, ms: lap.ms + (shifts.get(String(lap.run)) ?? 0) },
  );
  return {
    distance: raceDistance({
      ...{ laps, seed: seedOf(comboId) },
      ...(count !== undefined && { count }),
      ...(minutes !== undefined && { minutes }),
      ...(rivalMeanMs !== undefined && { rivalMeanMs }),
    }),
    trend: longRunTrend(lastForTime(runs), choices),
    basis: {
      kind: basis.kind,
      runs: basis.runs.length,
      laps: laps.length,
      ...(isMoved && { isMoved }),
    },
  };
}
