import type { AccountTarget } from "#combo";
import type { CalendarDate, Figure, Id } from "#domain";
import type { SectorAccount } from "../account/sectorAccount.ts";
import type { TimeAccount } from "../account/timeAccount.ts";
import type { BestCandidate } from "../bests/bestCandidates.ts";
import type { DatedBest } from "../bests/datedBest.ts";
import type { LatestUsual } from "../combo/latestUsual.ts";
import type { TargetState } from "../combo/targetStates.ts";
import type { LevelGain } from "../level/levelOver.ts";
import type { LapDistribution } from "../pace/lapDistribution.ts";
import type { Comparable } from "./comparable.ts";
import type { PeriodFigures } from "./periodFigures.ts";
import type { ReviewDetails } from "./reviewDetails.ts";
import type { SessionTrend } from "./sessionTrend.ts";

/** One session on the progress chart, ms. */
export interface SessionPoint {
  readonly sessionId: Id;
  readonly date: CalendarDate;
  readonly startedAt: number;
  /** Whether its times compare with those of today. */
  readonly isPresentPage: boolean;
  readonly laps: number;
  readonly paceLaps: number;
  readonly mistakes: number;
  readonly drivingMs: number;
  readonly median: number | undefined;
  readonly medianDecimals: number;
  readonly lowerQuartile: number | undefined;
  readonly upperQuartile: number | undefined;
  /** Best pace lap. */
  readonly best: number | undefined;
  readonly bestDecimals: number;
  /** Fastest clean lap, whatever the run; that of a summary too. */
  readonly bestClean: Pick<BestCandidate, "ms" | "decimals"> | undefined;
  readonly bestOfTen: number | undefined;
  /** Scatter in percent of the median, with its interval. */
  readonly consistency: { readonly percent: number; readonly low: number; readonly high: number } | undefined;
}

/** The time account of one session and what it was measured against. */
export interface SessionAccount {
  readonly sessionId: Id;
  readonly date: CalendarDate;
  readonly target: AccountTarget | undefined;
  readonly account: Figure<TimeAccount>;
}

/** What the review of one combo says. All but `points`, `bests`, `latestUsual` and `sessionBests` is of the present page within the period. */
export interface ComboReview extends ReviewDetails, PeriodFigures {
  /** The same of the equally long period before. */
  readonly before: PeriodFigures;
  /** Whether the two may be compared. */
  readonly against: Figure<Comparable>;
  /** Sessions in the period in time order, those of old pages and those without a lap too. */
  readonly points: readonly SessionPoint[];
  /** The present page's personal-best line, from its beginning. */
  readonly bests: readonly DatedBest[];
  /** The usual lap of the page's latest session with five pace laps, whatever the period. */
  readonly latestUsual: LatestUsual | undefined;
  /** The best clean lap of each session of the present page, from its beginning. */
  readonly sessionBests: readonly DatedBest[];
  /** Sessions in the period that belong to old pages, in no figure but the points. */
  readonly sessionsOnOldPages: number;
  /** How far the level has moved over the period. */
  readonly gain: Figure<LevelGain>;
  /** Trend of the session medians as a straight line, ms. */
  readonly trend: Figure<SessionTrend>;
  /** Trend of the scatter, in percent of the median; falling means steadier. */
  readonly steadiness: Figure<SessionTrend>;
  readonly accounts: readonly SessionAccount[];
  readonly account: Figure<TimeAccount>;
  readonly sectors: Figure<SectorAccount>;
  /** Pace laps of the period and of the equally long one before it. */
  readonly distribution: LapDistribution;
  /** All targets of the combo as they stand today, in the order a driver looks for. */
  readonly targets: readonly TargetState[];
  /** Days since the last session of the combo; undefined without one. */
  readonly daysSinceLast: number | undefined;
}
