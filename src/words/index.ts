/** Figures in sentences: the finding first, then the figures. */
export {
  type AccountLineName,
  accountLineMeanings,
  accountLineNames,
  accountReading,
  accountTitle,
  sayNoAccount,
} from "./account.ts";
export { accountChangeReading, accountChangeTitle, mostMoved } from "./accountChange.ts";
export { acrossReading, acrossTitle, acrossWords, sayAcross } from "./across.ts";
export { asideThing, sayAsideCount } from "./aside.ts";
export { cautionLines, cautions, sayBreakDue } from "./cautions.ts";
export { type Certainty, certaintyOf } from "./certainty.ts";
export { sayChance, TWENTY } from "./chance.ts";
export { sayCleanShare, sayMistakeShare, sayNearTheBest, shareEnds } from "./cleanShare.ts";
export { sayClock } from "./clock.ts";
export { steadinessReading, steadinessTitle } from "./consistency.ts";
export { sayAssumed, sayAssumedInShort, sayHangsOn, tooSlowForBend } from "./cornerAssumed.ts";
export { sayCornerKind, straightWords } from "./cornerKind.ts";
export { type CornerCounts, mostMistakesAt } from "./cornerMistakes.ts";
export {
  apexReading,
  apexTitle,
  cornerHabitsSay,
  cornerMistakesSay,
  cornerReading,
  cornerTitle,
  isApexElsewhere,
  noTradeSays,
  sayFromAbove,
  sayRadii,
} from "./cornerSays.ts";
export {
  assumedCornersSay,
  cornerChangeInShort,
  cornerChangeReading,
  cornerChangeTitle,
  cornersInShort,
  cornersTitle,
  cornerWorthReading,
  isWorthTelling,
  lapTimesFollowed,
  noAnswerYet,
  sayCornerInRow,
  sayCorners,
  sayCounted,
  sayOthersFirst,
  sayRange,
  sayRangeInShort,
  sayTooManySeconds,
  sayWhyCorners,
  sayWorth,
  sectorCornersSay,
  unusedSumSays,
} from "./cornersSay.ts";
export { asSentence, counted, listed } from "./counted.ts";
export { sayAsLately, sayCountedPractice, sayLapsASession, saySessionsAWeek } from "./countedPractice.ts";
export { sayCounts } from "./counts.ts";
export { sayDatesAhead } from "./datesAhead.ts";
export { answerOfDifferent } from "./different.ts";
export { drillReading, drillsFollowedSay, drillTitle } from "./drills.ts";
export { type Evidence, type Rests, sayEvidence } from "./evidence.ts";
export {
  factorNames,
  factorsReading,
  factorsTitle,
  sayDifference,
  type ToldDifference,
  toldDifferences,
} from "./factors.ts";
export { sayFarDate } from "./farDate.ts";
export {
  recordMeaning,
  sayFifth,
  sayForecastRecord,
  sayOutcome,
  sayOutcomes,
  sayRecord,
  sayRecordInShort,
} from "./forecastRecord.ts";
export { sayFound } from "./found.ts";
export { gainReading, gainTitle, type KnownOn, sayGainSpan } from "./gain.ts";
export { type GainColumn, type GainInShort, gainInShort } from "./gainInShort.ts";
export {
  gainDigits,
  sayDecibels,
  sayGain,
  sayGainChosen,
  sayHeadroom,
  sayHeldGain,
  sayMendFirst,
  sayNoGain,
  sayOtherInForce,
  sayRimForce,
  sayStepUp,
  sayTimeAtLimit,
  type TurnAtGain,
  wantedForGain,
  waveCompares,
  waveIsASketch,
  waveSays,
  whyGainIsARange,
} from "./gainSum.ts";
export { sayGap, sayGapHere, saySeenCorner } from "./gaps.ts";
export { sayGuest, sayGuestLaps } from "./guest.ts";
export { individualsReading, individualsTitle } from "./individuals.ts";
export { sayLapTime } from "./lapTime.ts";
export { askLongGap } from "./longGap.ts";
export { type NextRunContext, suggestNextRun } from "./nextRun.ts";
export { sayOneEvening } from "./oneEvening.ts";
export { outcomeRows } from "./outcomeRows.ts";
export {
  bandMeaning,
  type CurveFigures,
  type ExpectedDates,
  sayCurve,
  sayExpected,
} from "./outlook.ts";
export { overnightReading, overnightTitle } from "./overnight.ts";
export { nowBeatsSays, scatterShiftSays, shiftReading, shiftTitle } from "./periodShift.ts";
export { personalBestReading, personalBestTitle } from "./personalBest.ts";
export { checkWords } from "./planChecks.ts";
export { type PlanRests, planEvidence, planRests } from "./planEvidence.ts";
export { drillWords, plannedLines, sayDrill, sayDrillCount, sayGoodWhen, writtenLine } from "./planLine.ts";
export {
  nextOfLine,
  sayLapsSoFar,
  sayLineInShort,
  sayLineSoFar,
  sayNoneLeft,
  sayPlaceInPlan,
} from "./planLog.ts";
export { sayCameTo, sayMet, sayWent } from "./planOutcome.ts";
export { sayPlanSize } from "./planSize.ts";
export { linesOfTemplate, templateOf } from "./planTemplate.ts";
export { sayWhy } from "./planWhy.ts";
export {
  practiceReading,
  practiceTitle,
  sayBreak,
  sayBreaks,
  sayHours,
  sayPracticeRate,
} from "./practice.ts";
export { progressBy100Laps, progressReading, progressTitle } from "./progress.ts";
export { type KnownAtSetting, questionTarget } from "./questionTarget.ts";
export {
  fuelCaution,
  sayAhead,
  sayCleanRun,
  sayFuel,
  sayFuelLaps,
  sayLongRun,
  sayLongRunMeaning,
  sayRaceLength,
  sayRaceRests,
} from "./race.ts";
export { sayMissing, sayReason, sayTooFew } from "./reason.ts";
export { withReasonNow } from "./reasonNow.ts";
export { rigAnswerShift, sayLatestRig, sayRigAnswer, sayRigEvidence, sayRigName } from "./rigAnswer.ts";
export { sayNeither, sayRigStep } from "./rigStep.ts";
export {
  type SaidTest,
  sayKeptNote,
  sayPairsFallen,
  sayRigTest,
  sayTestCheck,
  sayTestEstimate,
  sayTestInShort,
  sayTestOfSide,
  shiftOf,
} from "./rigTest.ts";
export {
  askTest,
  sayFoundBy,
  sayNotWorth,
  sayQuestionLeft,
  sayTestSize,
  sayWhySoMany,
} from "./rigTestPlan.ts";
export {
  driveOnLog,
  lookAtTest,
  putItOn,
  sayBegunAnew,
  sayDoesNotCount,
  sayNextTestRun,
  sayNotInForce,
  sayPair,
  sayPairMark,
  sayPairsDriven,
  sayPutBackOn,
  sayRunOfTest,
  sayStopEarly,
  sayTestAfter,
  sayTestPlace,
  sayTestRun,
  sayTestRunInShort,
  sayTestRunToCome,
  sayWhereToDrive,
  sayWhyAside,
  testPutOff,
  testRunSays,
  toldWhenOver,
  voidReasons,
} from "./rigTestProgress.ts";
export { type SaidSides, saidSides, saySide } from "./rigTestSides.ts";
export { type RunFigure, sayRunFigures, sayScatterFigure } from "./runFigures.ts";
export { sayAgainstRun, sayAgainstTarget, sayMistakes, sayPointedAt, sayTrendInRun } from "./runLines.ts";
export { sayRun } from "./runSays.ts";
export { effortWords, kindWords, sayRunTask } from "./runTask.ts";
export { sayScatter } from "./scatter.ts";
export {
  curvedGlassSays,
  type LengthUnit,
  mostSideAngle,
  sayAngle,
  sayCurveAsSold,
  sayLength,
  sayNoUpright,
  sayNoView,
  sayPlan,
  sayScreenView,
  saySharpness,
  saySquareTurn,
  sayToMend,
  screenViewReading,
  screenViewTitle,
  tooTightCurve,
} from "./screenView.ts";
export { sectorsReading, sectorsTitle } from "./sectors.ts";
export { saySession } from "./sessionSays.ts";
export { sayShareBefore } from "./sharesCompared.ts";
export { isClear } from "./shift.ts";
export { sayShiftEnds, sideBySideReading, sideBySideTitle } from "./sideBySide.ts";
export { spreadReading, spreadShares, spreadTitle } from "./spreadSources.ts";
export { sayStrip, sayStripLap, sayStripThinned } from "./strip.ts";
export { suggestionParts } from "./suggestedTargets.ts";
export type { NextRun, WhatNext } from "./suggestion.ts";
export { progressOnly, sayHowToType, valueLabel } from "./targetForm.ts";
export { sayChanged, sayEarlier } from "./targetHistory.ts";
export {
  chanceMeaning,
  sayMilestones,
  sayMostlyAssumption,
  sayNoForecast,
  sayTargetChance,
  sayTargetDates,
  sayTargetRests,
  usualLapMeaning,
} from "./targetOutlook.ts";
export { sayStanding, sayStandingInShort } from "./targetStanding.ts";
export {
  bestFigure,
  sayKnownFigure,
  sayProgress,
  sayTarget,
  sayTargetFigure,
  sayTargetValue,
  sayWay,
  targetFigure,
} from "./targets.ts";
export { thirdsReading, thirdsTitle } from "./thirds.ts";
export { sayScatterAsTime, sayToGo } from "./toGo.ts";
export { sayLevel, sayUsual } from "./usualLap.ts";
export {
  sayBestOfRun,
  saySoFar,
  sayVerdict,
  sayVerdictAloud,
  sayVerdictFigures,
  type VerdictWords,
} from "./verdict.ts";
export {
  sayDriven,
  type WeekFinding,
  weekAgainstMeaning,
  weekDays,
  weekFinding,
  weekNext,
  weekTitle,
} from "./weekSays.ts";
export { sayCornersThatGive, saySectorShares, whereInShort } from "./whereToFind.ts";
