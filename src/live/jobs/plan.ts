import { onPage, presentPage } from "#combo";
import { type ReadOnlyLogbook, rigTests, runsOfTest } from "#db";
import type { CalendarDate, Id, Preferences } from "#domain";
import { draftPlan, gatherFacts, lapsOfTestRun, type PlanDraft, type PlanFacts, testProgress } from "#stats";
import { cornersInput } from "./corners.ts";
import type { JobRun } from "./job.ts";
import { keptCurve } from "./keptCurve.ts";

export interface PlanDetails {
  readonly comboId: Id;
  readonly today: CalendarDate;
  /** Minutes the driver has; absent: those of the usual evening. */
  readonly minutes?: number | undefined;
}

/** The draft of a combo's next session, and the figures it was drafted from. */
export interface FoundPlan {
  readonly draft: PlanDraft;
  readonly facts: PlanFacts;
}

/** Drafts the next session with a combo; null where the combo is not there. */
export const runPlan: JobRun<PlanDetails, FoundPlan | null> = async (book, { comboId, today, minutes }) => {
  const input = await cornersInput(book, { comboId, today });
  if (input === null) return null;
  const rigTest = await waitingTest(book, comboId, input.preferences);
  const page = onPage(presentPage(input.pages, today), input.digests);
  const curve = await keptCurve(book, { comboId, page, driven: input.digests, today });
  const facts = gatherFacts({ ...input, comboId, rigTest, curve });
  return { draft: draftPlan(facts, minutes), facts };
};

/** The rig test of a combo that waits for its next run, in a session not begun yet. */
async function waitingTest(
  book: ReadOnlyLogbook,
  comboId: Id,
  choices: Pick<Preferences, "settlingLaps" | "displayDecimals" | "marginPercent">,
): Promise<PlanFacts["rigTest"]> {
  for (const test of await rigTests(book, comboId)) {
    if (test.endedAt !== undefined || test.kept !== undefined) continue;
    const progress = testProgress(test, await runsOfTest(book, test), choices, null);
    if (progress.next === undefined) continue;
    const runs = 2 * (progress.planned - progress.complete);
    return { id: test.id, laps: lapsOfTestRun(test), runs };
  }
  return undefined;
}
