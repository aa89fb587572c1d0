import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  combosWithNames,
  editRun,
  giveRun,
  runOf,
  runsOfCombo,
  sessionsOfCombo,
  undoChange,
} from "#db";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

test("a guest's run goes to their logbook, with its laps, as their own", async () => {
  const { book, runId } = await anOpenSession();
  const { book: theirs } = await aLogbook();
  await editRun(book, { runId, patch: { guest: "Jo" } });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  const given = await giveRun(book, theirs, runId);
  expect(await runOf(book, runId)).toBeUndefined();
  const [combo] = await combosWithNames(theirs);
  expect(combo).toMatchObject({ car: { name: "Club hatch" }, track: { name: "Marlow Fen" } });
  const [run] = await runsOfCombo(theirs, combo?.combo.id ?? "");
  expect(run).toMatchObject({ id: runId, laps: [{ ms: 83000 }] });
  expect(run).not.toHaveProperty("guest");
  expect(await sessionsOfCombo(theirs, combo?.combo.id ?? "")).toMatchObject([{ date: "2026-03-10" }]);
  for (const change of given.there.toReversed()) await undoChange(theirs, change);
  await undoChange(book, given.here);
  expect(await combosWithNames(theirs)).toEqual([]);
  expect((await runOf(book, runId))?.guest).toBe("Jo");
});

test("a run given twice is there once", async () => {
  const { book, runId } = await anOpenSession();
  const { book: theirs } = await aLogbook();
  const given = await giveRun(book, theirs, runId);
  await undoChange(book, given.here);
  await giveRun(book, theirs, runId);
  const [combo] = await combosWithNames(theirs);
  expect(await runsOfCombo(theirs, combo?.combo.id ?? "")).toHaveLength(1);
  await expect(giveRun(book, theirs, runId)).rejects.toMatchObject({ code: "missing" });
});
