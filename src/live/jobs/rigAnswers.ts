import { rigs } from "#db";
import { type CalendarDate, type Id, type RigSettings, rigsInOrder } from "#domain";
import { isChangeTested, type RigStep, rigSteps, weightiestStep } from "#stats";
import type { JobRun } from "./job.ts";
import { runRigTestPages } from "./rigTestPages.ts";
import { type FoundRigTest, testsOfRecord } from "./rigTests.ts";
import { wholeBook } from "./wholeBook.ts";

/** Changes that are read at once; each older one is read on its own page. */
const mostChanges = 12;

export interface RigAnswersDetails {
  readonly today: CalendarDate;
  /** Only what was driven with this combo; without it the combo that can tell most of each change. */
  readonly comboId?: Id;
}

/** What became of one change of the rig. */
export interface RigAnswer {
  /** The record that began. */
  readonly rig: Pick<RigSettings, "id" | "name" | "from">;
  /** The combo that answers. */
  readonly comboId: Id;
  /** Tests of this very change on that combo, in pairs of runs: they say most. */
  readonly tests: readonly FoundRigTest[];
  /** Tests of the same change on other combos. */
  readonly elsewhere: readonly FoundRigTest[];
  /** Its weeks before and after. */
  readonly step: RigStep | undefined;
}

/** What became of the latest changes of the rig, the newest first; changes that nothing was driven about are left out. */
export const runRigAnswers: JobRun<RigAnswersDetails, RigAnswer[]> = async (book, { today, comboId }) => {
  const inOrder = rigsInOrder(await rigs(book));
  const records = inOrder.map(({ id, from }) => ({ id, from }));
  const changes = inOrder
    .slice(1)
    .map((rig, index) => ({ rig, before: inOrder[index] as RigSettings }))
    .filter(({ rig }) => rig.from <= today)
    .slice(-mostChanges)
    .toReversed();
  if (changes.length === 0) return [];
  const { combos } = await wholeBook(book, today);
  const pages = await runRigTestPages(book, {});
  const asked = comboId === undefined ? combos : combos.filter((combo) => combo.comboId === comboId);
  const answers: RigAnswer[] = [];
  for (const { rig, before } of changes) {
    const { id, name, from } = rig;
    const steps = rigSteps({ combos: asked, rigId: id, records, today });
    const tests = testsOfRecord(pages, id).filter(
      ({ test, report, side }) => report.isOver && side === "B" && isChangeTested(test, before),
    );
    const asTested = tests.findLast((test) => comboId === undefined || test.comboId === comboId);
    const answering = asTested?.comboId ?? weightiestStep(steps)?.comboId;
    if (answering === undefined) continue;
    answers.push({
      rig: { id, name, from },
      comboId: answering,
      tests: tests.filter((test) => test.comboId === answering),
      elsewhere: tests.filter((test) => test.comboId !== answering),
      step: steps.find((step) => step.comboId === answering),
    });
  }
  return answers;
};
