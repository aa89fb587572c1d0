import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { deleteTarget, forecastsOfTarget, keepForecasts, setTarget } from "#db";
import type { NewForecast } from "#stats";
import { anOpenSession } from "../../../support/aLogbook.ts";

test("forecasts are kept once a session and target, and scored with the day it was found", async () => {
  const { book, comboId, sessionId, clock } = await anOpenSession();
  const { id: targetId } = await setTarget(book, {
    comboId,
    kind: "best",
    value: 82_000,
    setOn: "2026-03-10",
  });
  const made: NewForecast = {
    ...{ targetId, comboId, madeOn: "2026-03-10", by: "2026-04-01", chance: 0.4, method: "level, version 1" },
    kind: "best",
    ...{ value: 82_000, sessions: 6, lapsASession: 20, madeAfter: sessionId },
  };
  const keep = (make: Parameters<typeof keepForecasts>[1]["make"]) =>
    keepForecasts(book, { make, score: [], on: "2026-03-10" });
  await keep([made]);
  await keep([{ ...made, chance: 0.6 }]);
  const rows = () => forecastsOfTarget(book, targetId);
  expect(await rows()).toMatchObject([{ chance: 0.4 }]);
  clock.pass(1000);
  await keep([{ ...made, madeOn: "2026-03-12", madeAfter: book.newId() }]);
  const [first, second] = await rows();
  expect(second?.madeOn).toBe("2026-03-12");
  const change = await keepForecasts(book, {
    ...{ make: [], on: "2026-04-02" },
    score: [{ id: first?.id ?? "", reached: true }],
  });
  expect(await rows()).toMatchObject([{ reached: true, scoredOn: "2026-04-02" }, { madeOn: "2026-03-12" }]);
  expect(change.what).toBe("Forecasts kept");

  const again = { make: [], score: [{ id: first?.id ?? "", reached: true }], on: "2026-04-03" };
  expect((await keepForecasts(book, again)).edits).toEqual([]);
  await deleteTarget(book, targetId);
  await keep([{ ...made, madeOn: "2026-03-14", madeAfter: book.newId() }]);
  expect(await rows()).toHaveLength(2);
});
