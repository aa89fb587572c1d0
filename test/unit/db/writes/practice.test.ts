import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { comboWithNames, setPractice } from "#db";
import { anOpenSession } from "../../../support/aLogbook.ts";

test("practice to count on is kept figure by figure, and goes back to what was driven lately", async () => {
  const { book, comboId } = await anOpenSession();
  const kept = async () => (await comboWithNames(book, comboId))?.combo.practice;
  await setPractice(book, { comboId, practice: { sessionsAWeek: 3 } });
  await setPractice(book, { comboId, practice: { lapsASession: 24 } });
  expect(await kept()).toEqual({ sessionsAWeek: 3, lapsASession: 24 });
  const change = await setPractice(book, { comboId, practice: { sessionsAWeek: undefined } });
  expect(await kept()).toEqual({ lapsASession: 24 });
  expect(change.what).toBe("Practice to count on stored");
  await setPractice(book, { comboId, practice: { lapsASession: undefined } });
  expect(await kept()).toBeUndefined();
});
