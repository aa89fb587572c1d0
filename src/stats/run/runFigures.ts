import type { Figure, LapCounts } from "#domain";
import type { Consistency } from "../pace/consistency.ts";
import type { PointedAtFor } from "./pointedAtLaps.ts";
import type { RunTrend } from "./runTrend.ts";

/** A time with where it stands and how well it is known. */
export interface KnownTime {
  readonly ms: number;
  /** Known decimals of a second, 0 to 3. */
  readonly decimals: number;
  /** Absent for a time out of a summary. */
  readonly lapId: string | undefined;
}

/** How a run's usual lap differs from that of another run, ms; a gain is negative. */
export interface AgainstRun {
  /** Place of the other run in its session. */
  readonly n: number;
  /** Hodges–Lehmann estimate of the shift from that run to this one, with its interval. */
  readonly ms: number;
  readonly low: number;
  readonly high: number;
  /** Confidence the interval has. */
  readonly confidence: number;
  /** Whether the interval leaves out zero. The laps of one run are alike, so it is somewhat too narrow. */
  readonly isClear: boolean;
}

/** A run against the target of the day, ms; a gain is negative. */
export interface AgainstTarget {
  readonly targetMs: number;
  /** Best lap less the target, and to how many decimals the lap is known. */
  readonly best: number;
  readonly bestDecimals: number;
  /** Usual lap less the target, and to how many decimals it is known; absent where no usual lap is. */
  readonly usual: number | undefined;
  readonly usualDecimals: number;
  /** Laps at the target or under it, whatever their digits that are not known, of `laps`. */
  readonly reached: number;
  readonly laps: number;
}

/** A run against the personal best before it. */
export interface AgainstBest {
  readonly pbMs: number;
  /** Known decimals of its seconds, 0 to 3. */
  readonly pbDecimals: number;
  /** Best of the run less the personal best, ms. */
  readonly ms: number;
  /** Faster, whatever the digits that are not known. */
  readonly isNew: boolean;
  /** Not surely faster, but it may be as fast as the personal best. */
  readonly isLevel: boolean;
}

/** A lap worth a second look. */
export interface PointedAt {
  readonly lapId: string;
  /** Place in the run, from 1. */
  readonly number: number;
  readonly reasons: readonly PointedAtFor[];
}

/** The figures of one run. */
export interface RunFigures {
  readonly isGuest: boolean;
  readonly counts: LapCounts;
  /** Whether the figures are of pace laps; else they are of the run's clean laps and enter no other figure. */
  readonly isPace: boolean;
  /** Laps behind the figures. */
  readonly laps: number;
  readonly best: Figure<KnownTime>;
  /** Median, ms, of two laps at least; for a summary run what the driver called usual. */
  readonly usual: Figure<number>;
  /** Known decimals of it; whether it is what the driver called usual, and no median. */
  readonly usualDecimals: number;
  readonly isUsualGiven: boolean;
  readonly scatter: Figure<Consistency>;
  readonly trend: Figure<RunTrend>;
  /** Laps driven, written down or not, those on the way out or in left out. */
  readonly flyingLaps: number;
  /** Own mistakes, laps without a time among them. */
  readonly mistakes: number;
  /** So many of the flying laps had a mistake or were lost that it is the first thing to say. */
  readonly isUntidy: boolean;
  readonly againstRunBefore: Figure<AgainstRun>;
  readonly againstTarget: Figure<AgainstTarget>;
  readonly againstBest: Figure<AgainstBest>;
  /** The lap that was the page's first personal best, where this run brought it: a faster one may have followed. */
  readonly firstBest: KnownTime | undefined;
  /** The hardest best-lap target that the best of this run is the first lap to reach, ms. */
  readonly bestTargetReached: number | undefined;
  readonly pointedAt: readonly PointedAt[];
}
