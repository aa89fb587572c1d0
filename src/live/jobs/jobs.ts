import type { ReadOnlyLogbook } from "#db";
import type { Figure } from "#domain";
import type {
  ComboLine,
  ComboReview,
  CornersReport,
  CountedDrills,
  OwnRecord,
  PracticeRate,
  RaceOutlook,
  RigStep,
  RunBasis,
  SuggestedTargets,
  TargetFigure,
  TargetOutlook,
  TargetWay,
  TestBasis,
  WhereToFind,
} from "#stats";
import { type AcrossCombosDetails, runAcrossCombos } from "./acrossCombos.ts";
import { type BestAndUsual, type BestAndUsualDetails, runBestAndUsual } from "./bestAndUsual.ts";
import { type ComboReviewDetails, runComboReview } from "./comboReview.ts";
import { type CornersDetails, runCorners } from "./corners.ts";
import { type DrillsDetails, runDrills } from "./drills.ts";
import { type ForecastsDue, type ForecastsDueDetails, runForecastsDue } from "./forecastsDue.ts";
import { runFreshen } from "./freshen.ts";
import type { JobRun } from "./job.ts";
import { type OwnRecordDetails, runOwnRecord } from "./ownRecord.ts";
import { type FoundPlan, type PlanDetails, runPlan } from "./plan.ts";
import { type PracticeLatelyDetails, runPracticeLately } from "./practiceLately.ts";
import { type RaceDetails, runRace } from "./race.ts";
import { type RigAnswer, type RigAnswersDetails, runRigAnswers } from "./rigAnswers.ts";
import { type RigStepsDetails, runRigSteps } from "./rigSteps.ts";
import { type RigTestPage, type RigTestPagesDetails, runRigTestPages } from "./rigTestPages.ts";
import { type FoundRigTest, type RigTestsDetails, runRigTests } from "./rigTests.ts";
import { type RunBasisDetails, runRunBasis } from "./runBasis.ts";
import { runSearch, type SearchDetails, type SearchResult } from "./search.ts";
import { type FoundSides, runSideBySide, type SideBySideDetails } from "./sideBySide.ts";
import { runStatement, type Statement, type StatementDetails } from "./statement.ts";
import { runSuggestedTargets, type SuggestedTargetsDetails } from "./suggestedTargets.ts";
import { runTargetNow, type TargetNowDetails } from "./targetNow.ts";
import { runTargetOutlook, type TargetOutlookDetails } from "./targetOutlook.ts";
import { runTargetWays, type TargetWaysDetails } from "./targetWays.ts";
import { runTestBasis, type TestBasisDetails } from "./testBasis.ts";
import { runWhereToFind, type WhereToFindDetails } from "./whereToFind.ts";

/** What each job is asked with and gives. */
interface Jobs {
  readonly acrossCombos: { readonly details: AcrossCombosDetails; readonly result: ComboLine[] };
  readonly bestAndUsual: { readonly details: BestAndUsualDetails; readonly result: BestAndUsual[] };
  readonly comboReview: { readonly details: ComboReviewDetails; readonly result: ComboReview };
  readonly corners: { readonly details: CornersDetails; readonly result: CornersReport | null };
  readonly drills: { readonly details: DrillsDetails; readonly result: CountedDrills };
  readonly forecastsDue: { readonly details: ForecastsDueDetails; readonly result: ForecastsDue };
  readonly freshen: { readonly details: null; readonly result: number };
  readonly ownRecord: { readonly details: OwnRecordDetails; readonly result: OwnRecord };
  readonly plan: { readonly details: PlanDetails; readonly result: FoundPlan | null };
  readonly practiceLately: {
    readonly details: PracticeLatelyDetails;
    readonly result: PracticeRate | null;
  };
  readonly race: { readonly details: RaceDetails; readonly result: RaceOutlook };
  readonly rigAnswers: { readonly details: RigAnswersDetails; readonly result: RigAnswer[] };
  readonly rigSteps: { readonly details: RigStepsDetails; readonly result: RigStep[] };
  readonly rigTestPages: { readonly details: RigTestPagesDetails; readonly result: RigTestPage[] };
  readonly rigTests: { readonly details: RigTestsDetails; readonly result: FoundRigTest[] };
  readonly runBasis: { readonly details: RunBasisDetails; readonly result: RunBasis };
  readonly search: { readonly details: SearchDetails; readonly result: SearchResult };
  readonly sideBySide: { readonly details: SideBySideDetails; readonly result: FoundSides | null };
  readonly statement: { readonly details: StatementDetails; readonly result: Statement };
  readonly suggestedTargets: {
    readonly details: SuggestedTargetsDetails;
    readonly result: Figure<SuggestedTargets>;
  };
  readonly targetNow: { readonly details: TargetNowDetails; readonly result: TargetFigure | null };
  readonly targetOutlook: {
    readonly details: TargetOutlookDetails;
    readonly result: Figure<TargetOutlook>;
  };
  readonly targetWays: { readonly details: TargetWaysDetails; readonly result: TargetWay[] };
  readonly whereToFind: { readonly details: WhereToFindDetails; readonly result: WhereToFind[] };
  readonly testBasis: { readonly details: TestBasisDetails; readonly result: TestBasis };
}

export type JobName = keyof Jobs;
export type JobArguments<J extends JobName> = Jobs[J]["details"];
export type JobResult<J extends JobName> = Jobs[J]["result"];

const runs: { readonly [J in JobName]: JobRun<JobArguments<J>, JobResult<J>> } = {
  acrossCombos: runAcrossCombos,
  bestAndUsual: runBestAndUsual,
  comboReview: runComboReview,
  corners: runCorners,
  drills: runDrills,
  forecastsDue: runForecastsDue,
  freshen: runFreshen,
  ownRecord: runOwnRecord,
  plan: runPlan,
  practiceLately: runPracticeLately,
  race: runRace,
  rigAnswers: runRigAnswers,
  rigSteps: runRigSteps,
  rigTestPages: runRigTestPages,
  rigTests: runRigTests,
  runBasis: runRunBasis,
  search: runSearch,
  sideBySide: runSideBySide,
  statement: runStatement,
  suggestedTargets: runSuggestedTargets,
  targetNow: runTargetNow,
  targetOutlook: runTargetOutlook,
  targetWays: runTargetWays,
  testBasis: runTestBasis,
  whereToFind: runWhereToFind,
};

/** Works out the figures of a job, here. */
export function runJob<J extends JobName>(
  book: ReadOnlyLogbook,
  job: J,
  details: JobArguments<J>,
): Promise<JobResult<J>> {
  return runs[job](book, details);
}
