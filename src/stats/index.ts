/** The figures made from laps, in the order of the chapters; the faces of the rooms say who may use them. */

// Plain samples

export {
  mean,
  median,
  medianAbsoluteDeviation,
  type Numbers,
  quantile,
  standardDeviation,
  VERY_LIKELY,
} from "#numbers";
export { lag1Autocorrelation } from "./sample/lag1Autocorrelation.ts";
export { type LinearFit, linearFit } from "./sample/linearFit.ts";
export { type Summary, summary } from "./sample/summary.ts";
export { type TheilSenLine, theilSen } from "./sample/theilSen.ts";
export { type Share, wilsonInterval } from "./sample/wilsonInterval.ts";

// Pace and spread

export { type BestInARow, bestInARow, threeInARow } from "./pace/bestInARow.ts";
export { bestOfK } from "./pace/bestOfK.ts";
export { type Consistency, consistency } from "./pace/consistency.ts";
export {
  type LapBin,
  type LapDistribution,
  type LapQuarters,
  lapDistribution,
} from "./pace/lapDistribution.ts";
export { type NearTheBest, shareWithinMargin } from "./pace/shareWithinMargin.ts";
export { successiveScatter } from "./pace/successiveScatter.ts";

// The time account

export type { LapInAccount } from "./account/accountSteps.ts";
export { type LineToWorkOn, largestLine } from "./account/largestLine.ts";
export type { OddPart } from "./account/oddParts.ts";
export { reachableLap } from "./account/reachableLap.ts";
export { type SectorAccount, type SectorLine, sectorAccount } from "./account/sectorAccount.ts";
export { type LapOfSectors, sumOfBestSectors } from "./account/sumOfBestSectors.ts";
export { type LapForAccount, type TimeAccount, timeAccount } from "./account/timeAccount.ts";
export type { WorkOn } from "./account/workOn.ts";

// Inside a run

export { chanceOfPointing } from "./run/chanceOfPointing.ts";
export { type IndividualsChart, individualsChart } from "./run/individualsChart.ts";
export { type KnownBest, type LapDifferences, lapDifferences } from "./run/lapDifferences.ts";
export { modifiedZScores } from "./run/modifiedZScores.ts";
export { type PointedAtFor, type PointedAtLap, pointedAtLaps } from "./run/pointedAtLaps.ts";
export { type RunTrend, runTrend } from "./run/runTrend.ts";

// Over weeks

export { type BestStep, type LapForBest, personalBests } from "./bests/personalBests.ts";
export type { Break } from "./period/breaksOf.ts";
export type { Band, Range } from "./weeks/bands.ts";
export { type BreakCost, breakCosts, type DatedMedian } from "./weeks/breakCosts.ts";
export { type ExponentialFit, fitExponential } from "./weeks/fitExponential.ts";
export { fitPower, type PowerFit } from "./weeks/fitPower.ts";
export type { FutureSession, PastSession, PracticeQuestion } from "./weeks/history.ts";
export { type MannKendall, mannKendall } from "./weeks/mannKendall.ts";
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

export { brierScore, type ScoredForecast } from "./targets/brierScore.ts";
export type { ExpectedSession } from "./targets/expectedSession.ts";
export { type FairTargets, fairTargets } from "./targets/fairTargets.ts";
export { forecastOutcome, type OutcomeQuestion } from "./targets/forecastOutcome.ts";
export { type ForecastRecord, forecastRecord, type RecordFifth } from "./targets/forecastRecord.ts";
export { forecastsToMake, type NewForecast } from "./targets/forecastsToMake.ts";
export { forecastTarget, type TargetForecast, type TargetQuestion } from "./targets/forecastTarget.ts";
export type { ForecastKind } from "./targets/futureFigures.ts";
export { type MilestoneQuestion, milestones } from "./targets/milestones.ts";
export { type JudgedForecast, type OwnRecord, ownRecord, type TargetRecord } from "./targets/ownRecord.ts";
export {
  type RecordAgainstSaid,
  type RecordedForecast,
  recordAgainstSaid,
} from "./targets/recordAgainstSaid.ts";
export { type SectorPace, sectorSplit } from "./targets/sectorSplit.ts";

// The plan

export { chanceNowBeats } from "./evenings/chanceNowBeats.ts";
export { type SpreadSources, spreadSources } from "./evenings/spreadSources.ts";
export { type Overnight, staysOvernight } from "./evenings/staysOvernight.ts";
export { checkAsTold } from "./plan/asTold.ts";
export { becauseNow } from "./plan/becauseNow.ts";
export {
  type CountedDrills,
  countedDrills,
  type DrillsFollowed,
  type DrillsInput,
} from "./plan/countedDrills.ts";
export { draftPlan, type PlanDraft } from "./plan/draftPlan.ts";
export { type CountedDay, type DrillWeeks, drillWeeks } from "./plan/drillWeeks.ts";
export { planLaps, planMinutes } from "./plan/fitLines.ts";
export { gatherFacts, type PlanInput } from "./plan/gatherFacts.ts";
export type { CountedHabit, PlanFacts, TriedLine } from "./plan/planFacts.ts";
export { type LineOutcome, planOutcome } from "./plan/planOutcome.ts";
export type { Because, CornerTask, DraftLine, PlanRule } from "./plan/planRules.ts";
export { rigTestLine } from "./plan/rigTestLine.ts";
export { suggestionIn } from "./plan/suggestionIn.ts";

// Rig tests

export type { RankTest, TTest } from "./rigTests/findings.ts";
export { isChangeTested } from "./rigTests/isChangeTested.ts";
export { lapsOfTestRun } from "./rigTests/lapsOfTestRun.ts";
export { type OrderedPair, type OrderedTTest, orderedPairsTTest } from "./rigTests/orderedPairsTTest.ts";
export { pairedTTest } from "./rigTests/pairedTTest.ts";
export { pairOrder } from "./rigTests/pairOrder.ts";
export { differenceFound, leastPairs, pairsNeeded, testLevel } from "./rigTests/pairsNeeded.ts";
export {
  planTest,
  type TestPlan,
  type TestPlanQuestion,
  type TestSize,
  testSize,
} from "./rigTests/planTest.ts";
export { rankSumTest } from "./rigTests/rankSumTest.ts";
export { signedRankTest } from "./rigTests/signedRankTest.ts";

// Race distance

export {
  type AccountChange,
  type AccountLineKey,
  accountChange,
  accountLines,
  type ChangedLine,
} from "./account/accountChange.ts";
// Reports
export { acrossCombos, type ComboForLine, type ComboLine, type ToGo } from "./across/acrossCombos.ts";
export {
  type AcrossFigure,
  acrossFigures,
  acrossTrend,
  acrossValue,
  inOrderDriven,
} from "./across/acrossTrend.ts";
export { type SeasonLevel, seasonLevel } from "./across/seasonLevel.ts";
export type { BestCandidate } from "./bests/bestCandidates.ts";
export type { DatedBest } from "./bests/datedBest.ts";
export { datedBests } from "./bests/datedBests.ts";
export { mayTakeBest } from "./bests/mayTakeBest.ts";
export { rangeOfBests } from "./bests/rangeOfBests.ts";
export { type ComboQuestion, type ComboStanding, comboStanding } from "./combo/comboStanding.ts";
export { figureForTarget, type TargetFigure } from "./combo/figureForTarget.ts";
export { latestUsual, type UsualLap } from "./combo/latestUsual.ts";
export { pageCurve } from "./combo/pageCurve.ts";
export { levelOfPage } from "./combo/pageLevel.ts";
export { SEASON_DAYS, seasonBegins } from "./combo/season.ts";
export { nextTarget, type TargetState, targetStates } from "./combo/targetStates.ts";
export { type TargetWay, targetWays, type WayPoint } from "./combo/targetWays.ts";
export {
  type SideBySide,
  type SideFigures,
  type SidesApart,
  sideBySide,
} from "./compare/sideBySide.ts";
export type { ChangeInSum, CornerChange } from "./corners/cornerChanges.ts";
export { cornerBefore } from "./corners/cornerFacts.ts";
export type { CornerHabits } from "./corners/cornerHabits.ts";
export {
  type CornersInput,
  type CornersReport,
  type CornerWorth,
  cornersReport,
  sessionsForCorners,
} from "./corners/cornersReport.ts";
export type { MistakesAtCorner } from "./corners/mistakesAtCorners.ts";
export type { UnusedRoad } from "./corners/unusedRoad.ts";
export type { WhyCorner } from "./corners/whyCorner.ts";
export { isDrivenSession } from "./digest/isDrivenSession.ts";
export { isWholeDigest } from "./digest/isWholeDigest.ts";
export {
  methodVersion,
  NO_TIME,
  type SessionDigest,
  sessionDigest,
} from "./digest/sessionDigest.ts";
export type { Choices } from "./laps/choices.ts";
export { levelGain } from "./level/levelGain.ts";
export type { LevelGain } from "./level/levelOver.ts";
export { levelSettings } from "./level/levelSettings.ts";
export { leastWorthwhile } from "./level/typicalError.ts";
export type { PaceFigures } from "./pace/paceFigures.ts";
export { usualDecimals } from "./pace/usualDecimals.ts";
export { type ComboReviewInput, comboReview } from "./period/comboReview.ts";
export type { ComboReview, SessionAccount, SessionPoint } from "./period/comboReviewFigures.ts";
export { type CurveOutlook, curveOutlook, type DatedBand } from "./period/curveOutlook.ts";
export {
  type FactorDifference,
  type FactorGroup,
  type FactorGroups,
  factorGroups,
} from "./period/factorGroups.ts";
export { type Factor, factors } from "./period/factors.ts";
export { type ChangedQuestion, largestChange } from "./period/largestChange.ts";
export { type PageSession, pageEvents, pageHistory } from "./period/pageHistory.ts";
export { type PeriodShift, periodShift } from "./period/periodShift.ts";
export { type PracticeAmount, type PracticeDay, practiceAmount } from "./period/practiceAmount.ts";
export type { ReviewDetails } from "./period/reviewDetails.ts";
export type { SessionTrend, Slope, TrendPoint } from "./period/sessionTrend.ts";
export { isClearShift, type Shift } from "./period/shift.ts";
export { fuelNeeded } from "./race/fuelNeeded.ts";
export { levelSince } from "./race/levelSince.ts";
export type { LongRunTrend } from "./race/longRunTrend.ts";
export { type RaceDistance, type RaceQuestion, raceDistance } from "./race/raceDistance.ts";
export type { RaceLap } from "./race/raceLaps.ts";
export { type RaceLength, type RaceOutlook, raceOutlook } from "./race/raceOutlook.ts";
export type { RigRecordDay } from "./rigTests/rigSide.ts";
export {
  type RigStep,
  rigSteps,
  type SessionOfNeither,
  type SessionUsual,
  type SideOfStep,
} from "./rigTests/rigSteps.ts";
export {
  type FinishedTestReport,
  type RigPair,
  type RigTestReport,
  type RigVerdict,
  type RunningTestReport,
  rigTestReport,
} from "./rigTests/rigTestReport.ts";
export {
  type RunDifferences,
  spreadOfRunDifferences,
} from "./rigTests/spreadOfRunDifferences.ts";
export { type TestBasis, type TestBasisInput, testBasis } from "./rigTests/testBasis.ts";
export {
  type DrivenRun,
  type RunAside,
  type TestPair,
  type TestPlace,
  type TestProgress,
  testProgress,
  type WhyAside,
} from "./rigTests/testProgress.ts";
export { type RunInTest, testRuns } from "./rigTests/testRuns.ts";
export { weightiestStep } from "./rigTests/weightiestStep.ts";
export { whyAside } from "./rigTests/whyAside.ts";
export { longGap } from "./run/longGap.ts";
export type {
  AgainstBest,
  AgainstRun,
  AgainstTarget,
  KnownTime,
  PointedAt,
  RunFigures,
} from "./run/runFigures.ts";
export type { RunFinding } from "./run/runFinding.ts";
export { type RunReport, type RunReportInput, runReport } from "./run/runReport.ts";
export { type RunTimes, runTimes } from "./run/runTimes.ts";
export { type CountedSession, countSession } from "./session/countSession.ts";
export { hourReached } from "./session/hourReached.ts";
export {
  type SessionChart,
  type SessionReport,
  type SessionReportInput,
  sessionReport,
} from "./session/sessionReport.ts";
export { type SittingThirds, sittingThirds } from "./session/sittingThirds.ts";
export {
  LATELY_DAYS,
  type WeekCombo,
  type WeekLine,
  type WeekMain,
  type WeekStatement,
  type WeekTarget,
  weekStatement,
} from "./statement/weekStatement.ts";
export type { PagePractice } from "./targets/forecastBasis.ts";
export { type PracticeRate, practiceRate } from "./targets/practiceRate.ts";
export {
  type SuggestedTarget,
  type SuggestedTargets,
  suggestedTargets,
} from "./targets/suggestedTargets.ts";
export {
  type OutlookInput,
  type TargetOutlook,
  type TargetStep,
  targetOutlook,
} from "./targets/targetOutlook.ts";
export { type TargetProgress, targetProgress } from "./targets/targetProgress.ts";
export { type SectorShares, type WhereToFind, whereToFind } from "./targets/whereToFind.ts";
export {
  type RunBasis,
  type RunBasisInput,
  type RunScatters,
  type RunSpread,
  runBasis,
} from "./verdict/runBasis.ts";
export {
  type AgainstUsual,
  type ComparedRun,
  type CountedRun,
  type LapsOfRun,
  lapsOfRun,
  type RacedRun,
  type RunVerdict,
  type RunVerdictInput,
  runVerdict,
  type SteadyRun,
  type TestedRun,
  type UntestedRun,
  type UntidyRun,
} from "./verdict/runVerdict.ts";
