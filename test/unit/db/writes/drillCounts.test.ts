import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { countTry, runsOfSession, setCount } from "#db";
import { anOpenSession } from "../../../support/aLogbook.ts";

test("tries of a drill are counted one by one or as typed, each corner for itself, and taken away with none", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  const counts = async () => (await runsOfSession(book, sessionId))[0]?.counts;
  const traction = { runId, drill: "traction", corner: 5 } as const;
  // Two taps at once lose none.
  await Promise.all([
    countTry(book, { ...traction, isGood: true }),
    countTry(book, { ...traction, isGood: false }),
    countTry(book, { ...traction, isGood: true }),
  ]);
  expect(await counts()).toEqual([{ drill: "traction", corner: 5, tries: 3, good: 2 }]);
  const change = await setCount(book, { runId, drill: "half throttle", tries: 10, good: 7 });
  expect(change.what).toBe("7 of 10 counted");
  await countTry(book, { runId, drill: "traction", corner: 6, isGood: true });
  expect(await counts()).toEqual([
    { drill: "traction", corner: 5, tries: 3, good: 2 },
    { drill: "half throttle", tries: 10, good: 7 },
    { drill: "traction", corner: 6, tries: 1, good: 1 },
  ]);
  for (const drill of [traction, { runId, drill: "half throttle" }, { ...traction, corner: 6 }] as const)
    await setCount(book, { ...drill, tries: 0, good: 0 });
  expect((await runsOfSession(book, sessionId))[0]).not.toHaveProperty("counts");
  await expect(setCount(book, { ...traction, tries: 3, good: 4 })).rejects.toThrow(
    "4 of 3 is more than were tried",
  );
});
