/** The figures made from laps, in the order of the chapters; the faces of the rooms say who may use them. */

// Plain samples

export { lag1Autocorrelation } from "./sample/lag1Autocorrelation.ts";
export { type LinearFit, linearFit } from "./sample/linearFit.ts";
export { mean } from "./sample/mean.ts";
export { median } from "./sample/median.ts";
export { medianAbsoluteDeviation } from "./sample/medianAbsoluteDeviation.ts";
export type { Numbers } from "./sample/numbers.ts";
export { quantile } from "./sample/quantile.ts";
export { standardDeviation } from "./sample/standardDeviation.ts";
export { type Summary, summary } from "./sample/summary.ts";
export { type TheilSenLine, theilSen } from "./sample/theilSen.ts";
export { type Share, wilsonInterval } from "./sample/wilsonInterval.ts";

// Pace and spread

export { type BestInARow, bestInARow, threeInARow } from "./pace/bestInARow.ts";
export { bestOfK } from "./pace/bestOfK.ts";
export { type Consistency, consistency, LEAST_FOR_SPREAD } from "./pace/consistency.ts";
export {
  type LapBin,
  type LapDistribution,
  type LapQuarters,
  lapDistribution,
} from "./pace/lapDistribution.ts";
export { type NearTheBest, shareWithinMargin } from "./pace/shareWithinMargin.ts";
export { successiveScatter } from "./pace/successiveScatter.ts";

// The time account

export { type LineToWorkOn, largestLine } from "./account/largestLine.ts";
export { reachableLap } from "./account/reachableLap.ts";
export { type SectorAccount, type SectorLine, sectorAccount } from "./account/sectorAccount.ts";
export { type LapOfSectors, sumOfBestSectors } from "./account/sumOfBestSectors.ts";
export { type LapForAccount, type TimeAccount, timeAccount } from "./account/timeAccount.ts";

// Inside a run

export { type IndividualsChart, individualsChart } from "./run/individualsChart.ts";
export { type KnownBest, type LapDifferences, lapDifferences } from "./run/lapDifferences.ts";
export { modifiedZScores } from "./run/modifiedZScores.ts";
export { type PointedAtFor, type PointedAtLap, pointedAtLaps } from "./run/pointedAtLaps.ts";
export { type RunTrend, runTrend } from "./run/runTrend.ts";

// Over weeks

export type { Band, Range } from "./weeks/bands.ts";
export { type BreakCost, breakCosts, type DatedMedian } from "./weeks/breakCosts.ts";
export { type ExponentialFit, fitExponential } from "./weeks/fitExponential.ts";
export { fitPower, type PowerFit } from "./weeks/fitPower.ts";
export type { FutureSession, PastSession } from "./weeks/history.ts";
export { type MannKendall, mannKendall } from "./weeks/mannKendall.ts";
export { type BestStep, type LapForBest, personalBests } from "./weeks/personalBests.ts";
export {
  type CurveSummary,
  type PracticeCurve,
  type PracticeQuestion,
  practiceCurve,
} from "./weeks/practiceCurve.ts";
export type { SessionEvent } from "./weeks/sessionEvents.ts";
export { sessionsNeededForChange } from "./weeks/sessionsNeededForChange.ts";
export { type StepAtChange, stepAtChange } from "./weeks/stepAtChange.ts";

// The level

export type { ChangeOfLevel } from "./level/changeOfLevel.ts";
export { type LevelChange, levelChange } from "./level/levelChange.ts";
export { type LevelOutlook, type LevelOutlookQuestion, levelOutlook } from "./level/levelOutlook.ts";
export type { LevelSession } from "./level/levelSeries.ts";
export type { LevelSettings } from "./level/levelSettings.ts";
export type { LevelsOff } from "./level/levelsOff.ts";

// Targets

// Rig tests
export type { RankTest, TTest } from "./rigTests/findings.ts";
export { type OrderedPair, type OrderedTTest, orderedPairsTTest } from "./rigTests/orderedPairsTTest.ts";
export { pairedTTest } from "./rigTests/pairedTTest.ts";
export { pairOrder } from "./rigTests/pairOrder.ts";
export { pairsNeeded } from "./rigTests/pairsNeeded.ts";
export { rankSumTest } from "./rigTests/rankSumTest.ts";
export { signedRankTest } from "./rigTests/signedRankTest.ts";
export { brierScore, type ScoredForecast } from "./targets/brierScore.ts";
export type { ExpectedSession } from "./targets/expectedSession.ts";
export { fairTargets } from "./targets/fairTargets.ts";
export { type ForecastRecord, forecastRecord, type RecordFifth } from "./targets/forecastRecord.ts";
export { forecastTarget, type TargetForecast, type TargetQuestion } from "./targets/forecastTarget.ts";
export type { ForecastKind } from "./targets/futureFigures.ts";
export { type MilestoneQuestion, milestones } from "./targets/milestones.ts";
export { type SectorPace, sectorSplit } from "./targets/sectorSplit.ts";

// Race distance

export { fuelNeeded } from "./race/fuelNeeded.ts";
export { type RaceDistance, type RaceQuestion, raceDistance } from "./race/raceDistance.ts";
export type { RaceLap } from "./race/raceLaps.ts";
export {
  type AccountChange,
  type AccountLineKey,
  accountChange,
  accountLines,
  type ChangedLine,
} from "./reports/accountChange.ts";
export { type AccountTarget, accountTarget } from "./reports/accountTarget.ts";
// Reports
export { acrossCombos, type ComboForLine, type ComboLine } from "./reports/acrossCombos.ts";
export {
  type AcrossFigure,
  acrossFigures,
  acrossTrend,
  acrossValue,
  inOrderDriven,
} from "./reports/acrossTrend.ts";
export type { BestCandidate } from "./reports/bestCandidates.ts";
export { type ComboReviewInput, comboReview } from "./reports/comboReview.ts";
export type { ComboReview, DatedBest, SessionAccount, SessionPoint } from "./reports/comboReviewFigures.ts";
export { type CurveOutlook, curveOutlook, type DatedBand } from "./reports/curveOutlook.ts";
export { lapFlags } from "./reports/digestFlags.ts";
export { timesWith } from "./reports/digestLaps.ts";
export {
  type FactorDifference,
  type FactorGroup,
  type FactorGroups,
  factorGroups,
} from "./reports/factorGroups.ts";
export { type Factor, factors } from "./reports/factors.ts";
export { figureForTarget } from "./reports/figureForTarget.ts";
export { isWholeDigest } from "./reports/isWholeDigest.ts";
export { addCounts, type Choices, type LapCounts, type LapPlace, lapPlaces } from "./reports/lapPlaces.ts";
export { type ChangedQuestion, largestChange } from "./reports/largestChange.ts";
export type { PaceFigures } from "./reports/paceFigures.ts";
export { type PageSession, pageEvents, pageHistory } from "./reports/pageHistory.ts";
export { type PeriodShift, periodShift } from "./reports/periodShift.ts";
export { type PracticeAmount, type PracticeDay, practiceAmount } from "./reports/practiceAmount.ts";
export { type PracticeRate, practiceRate } from "./reports/practiceRate.ts";
export type { ReviewDetails } from "./reports/reviewDetails.ts";
export { type RigStep, rigSteps } from "./reports/rigSteps.ts";
export { type RigPair, type RigTestReport, type RigVerdict, rigTestReport } from "./reports/rigTestReport.ts";
export type {
  AgainstBest,
  AgainstRun,
  AgainstTarget,
  KnownTime,
  PointedAt,
  RunFigures,
} from "./reports/runFigures.ts";
export type { RunFinding } from "./reports/runFinding.ts";
export { type RunReport, type RunReportInput, runReport } from "./reports/runReport.ts";
export {
  isDigestCurrent,
  methodVersion,
  NO_TIME,
  type SessionDigest,
  sessionDigest,
} from "./reports/sessionDigest.ts";
export {
  type SessionChart,
  type SessionReport,
  type SessionReportInput,
  sessionReport,
  type WorkOn,
} from "./reports/sessionReport.ts";
export type { SessionTrend, Slope, TrendPoint } from "./reports/sessionTrend.ts";
export { isClearShift, type Shift } from "./reports/shift.ts";
export { type SittingThirds, sittingThirds } from "./reports/sittingThirds.ts";
export { spreadOfRunDifferences } from "./reports/spreadOfRunDifferences.ts";
export {
  type SuggestedTarget,
  type SuggestedTargets,
  suggestedTargets,
} from "./reports/suggestedTargets.ts";
export { type OutlookInput, type TargetOutlook, targetOutlook } from "./reports/targetOutlook.ts";
export { type TargetProgress, targetProgress } from "./reports/targetProgress.ts";
export {
  type WeekCombo,
  type WeekLine,
  type WeekMain,
  type WeekStatement,
  type WeekTarget,
  weekStatement,
} from "./reports/weekStatement.ts";
