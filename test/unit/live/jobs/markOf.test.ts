import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import {
  addCombo,
  addCornerReview,
  addLap,
  dump,
  editCorners,
  mergeInto,
  renameCar,
  takeBackMerge,
} from "#db";
import type { AllRows, Run } from "#domain";
import type { JobArguments, JobName } from "../../../../src/live/jobs/jobs.ts";
import { markOf } from "../../../../src/live/jobs/markOf.ts";
import { aFullLogbook } from "../../../support/aFullLogbook.ts";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const today = "2026-03-12";

/** The marks of every question there is. */
async function marksIn(book: Parameters<typeof markOf>[0], comboId: string) {
  const by = "2026-04-30";
  const questions: { readonly [J in Exclude<JobName, "freshen">]: JobArguments<J> } = {
    acrossCombos: { today },
    bestAndUsual: { comboIds: [comboId], today },
    comboReview: { comboId, period: {}, today },
    corners: { comboId, today },
    drills: { comboId, today },
    forecastsDue: { comboId, today },
    ownRecord: { today },
    plan: { comboId, today },
    practiceLately: { comboId, today },
    race: { comboId, today, race: { count: 20 } },
    rigAnswers: { today },
    rigSteps: { rigId: "rig", records: [{ id: "rig", from: "2026-03-01" }], today },
    rigTestPages: { comboId: "combo" },
    rigTests: { rigId: "rig" },
    runBasis: { comboId, startedAt: 0, date: today, surface: "dry", today },
    search: { terms: {}, most: 5 },
    sideBySide: { kind: "run", ids: ["one", "other"] },
    statement: { monday: "2026-03-09", today },
    suggestedTargets: { comboId, kind: "best", by, today },
    targetNow: { comboId, kind: "scatter", today },
    targetOutlook: { comboId, kind: "best", value: 82_000, by, today },
    targetWays: { comboId, today },
    testBasis: { comboId, today },
    whereToFind: { comboId, today },
  };
  const names = Object.keys(questions) as (keyof typeof questions)[];
  const marks = await Promise.all(names.map((job) => markOf(book, job, questions[job] as never)));
  return Object.fromEntries(names.map((name, index) => [name, marks[index]]));
}

/** The questions whose marks are the same in both. */
function unmoved(before: Awaited<ReturnType<typeof marksIn>>, after: typeof before): string[] {
  return Object.keys(before).filter((job) => before[job] === after[job]);
}

/** The same logbook on another device, with one thing done there whose stamp is older than the newest one here. */
async function olderElsewhere(change: (rows: AllRows) => AllRows) {
  const { book, comboId, sessionId, clock } = await aFullLogbook();
  const shared = await dump(book);
  const { runId } = await addCombo(book, { car: { name: "other" }, track: { name: "other" } }).then(() => ({
    runId: shared.runs.find((run) => run.sessionId === sessionId && run.deletedAt === undefined)?.id ?? "",
  }));
  clock.pass(600_000);
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_999) });
  return { book, comboId, runId, theirs: change(shared) };
}

const older = 1000;
const changes: Readonly<Record<string, (rows: AllRows) => AllRows>> = {
  "a reference lap": (rows) => ({
    ...rows,
    references: rows.references.map((row) => ({ ...row, ms: 81_000, updatedAt: row.updatedAt + older })),
  }),
  "a target": (rows) => ({
    ...rows,
    targets: rows.targets.map((row) => ({ ...row, value: 81_000, updatedAt: row.updatedAt + older })),
  }),
  "a page": (rows) => ({
    ...rows,
    pages: rows.pages.map((row) => ({ ...row, from: row.from - 1, updatedAt: row.updatedAt + older })),
  }),
  "a session": (rows) => ({
    ...rows,
    sessions: rows.sessions.map((row) => ({ ...row, note: "wet kerbs", updatedAt: row.updatedAt + older })),
  }),
  "a lap": (rows) => ({
    ...rows,
    runs: rows.runs.map(
      (run): Run => ({
        ...run,
        laps: run.laps.map((lap) => ({ ...lap, note: "kerb", updatedAt: lap.updatedAt + older })),
      }),
    ),
  }),
};

for (const [what, change] of Object.entries(changes))
  test(`${what} merged in that is older than what was typed here last is asked about again, and so is taking it back`, async () => {
    const { book, comboId, theirs } = await olderElsewhere(change);
    const before = await marksIn(book, comboId);
    const merged = await mergeInto(book, theirs, "the other device");
    expect(merged.edits.length).toBeGreaterThan(0);
    const after = await marksIn(book, comboId);
    expect(unmoved(before, after)).toEqual([]);
    await takeBackMerge(book, merged);
    expect(unmoved(after, await marksIn(book, comboId))).toEqual([]);
    book.close();
  });

test("a car of another name is searched for anew", async () => {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const before = await marksIn(book, comboId);
  const car = await book.tables.cars.toCollection().first();
  await renameCar(book, { id: car?.id ?? "", name: "club saloon" });
  expect(unmoved(before, await marksIn(book, comboId))).not.toContain("search");
  book.close();
});

test("what is known of a car, a layout, a combo's corners or a replay is asked about anew by the corners alone of its combo", async () => {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const [layout] = await book.tables.layouts.toArray();
  const ofComboBefore = async (change: () => Promise<unknown>) => {
    const before = await marksIn(book, comboId);
    await change();
    const same = unmoved(before, await marksIn(book, comboId));
    expect(same).not.toContain("corners");
    expect(same).toContain("comboReview");
  };
  await ofComboBefore(() =>
    editCorners(book, { layoutId: layout?.id ?? "", corners: [{ number: 3, patch: { bend: "slow" } }] }),
  );
  await ofComboBefore(() => addCornerReview(book, { comboId, on: today, corners: [{ number: 3, exit: 1 }] }));
  await ofComboBefore(() => book.tables.cars.toCollection().modify({ grip: 1.3 }));
  await ofComboBefore(() =>
    book.tables.combos.toCollection().modify({ lowestSpeeds: [{ number: 3, speed: 20 }] }),
  );
  book.close();
});
