import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import {
  addCombo,
  addLaps,
  changeSessionDate,
  daysDriven,
  endSession,
  lastDriven,
  lastSession,
  recentSessions,
  runsOfSession,
  sessionsInDoubt,
  sessionsOpen,
  sessionsSince,
  setTarget,
  splitSession,
  startSession,
  turnPage,
} from "#db";
import { addDays, endOfTomorrow } from "#domain";
import { askHere } from "#live";
import { markOf } from "../../../src/live/jobs/markOf.ts";
import { addSessions } from "../../support/addSessions.ts";
import { aLap } from "../../support/aLap.ts";
import { aLogbook } from "../../support/aLogbook.ts";

const today = "2026-03-10";
const until = endOfTomorrow(today);
const laps = [84_300, 84_100, 84_200, 84_000, 84_400, 83_900];
const evenings = Array.from({ length: 9 }, (_, n) => ({
  date: addDays(today, n * 3 - 24),
  laps: laps.map((ms) => ms - n * 60),
}));

async function months() {
  const { book, clock } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const ids = await addSessions(book, comboId, evenings);
  await setTarget(book, { comboId, kind: "best", value: 83_000, by: "2026-04-30", setOn: "2026-02-20" });
  return { book, clock, comboId, last: ids.at(-1) ?? "" };
}

test("a session and a page dated 2036 change none of the figures of today, whichever are asked for", async () => {
  const { book, comboId } = await months();
  const on = "2026-03-01";
  const figures = async () => ({
    comboReview: await askHere(book, "comboReview", { comboId, period: {}, today }),
    weeks: await askHere(book, "comboReview", { comboId, period: { from: "2026-02-10" }, today }),
    acrossCombos: await askHere(book, "acrossCombos", { today }),
    rigSteps: await askHere(book, "rigSteps", { rigId: "r", records: [{ id: "r", from: on }], today }),
    statement: await askHere(book, "statement", { monday: "2026-03-09", today }),
    suggestedTargets: await askHere(book, "suggestedTargets", {
      comboId,
      kind: "best",
      by: "2026-04-30",
      today,
    }),
    targetOutlook: await askHere(book, "targetOutlook", {
      comboId,
      kind: "best",
      value: 83_500,
      by: "2026-04-30",
      today,
    }),
    targetWays: await askHere(book, "targetWays", { comboId, today }),
  });
  const before = await figures();
  expect(before.comboReview.points).toHaveLength(9);
  await addSessions(book, comboId, [{ date: "2036-03-04", laps: [70_000, 70_100, 70_200, 70_300, 70_400] }]);
  await turnPage(book, { comboIds: "all", from: Date.UTC(2036, 2, 4, 19), reason: "new tyre model" });
  expect(await figures()).toEqual(before);
  book.close();
});

test("a session that a clock of 2016 has dated changes no figure, nor what is split off it, until its date is changed", async () => {
  const { book, clock, comboId } = await months();
  const figures = async () => ({
    review: await askHere(book, "comboReview", { comboId, period: {}, today }),
    across: await askHere(book, "acrossCombos", { today }),
  });
  const before = await figures();
  const now = clock.now();
  clock.set(Date.UTC(2016, 6, 3, 18));
  const { sessionId, runId } = await startSession(book, {
    comboId,
    date: "2016-07-03",
    zone: "Europe/Berlin",
  });
  await addLaps(book, { runId, laps: laps.map((ms) => ({ id: book.newId(), lap: aLap(ms) })) });
  await endSession(book, { sessionId });
  clock.set(now);
  const [, second] = (await runsOfSession(book, sessionId))[0]?.laps ?? [];
  const split = await splitSession(book, { sessionId, fromRunId: runId, fromLapId: second?.id ?? "" });
  expect((await sessionsInDoubt(book, today)).map(({ id }) => id).sort()).toEqual(
    [sessionId, split.sessionId].sort(),
  );
  expect(await figures()).toEqual(before);
  // An evening of that year that was entered afterwards is the driver's own word.
  await addSessions(book, comboId, [{ date: "2016-07-03", laps }]);
  expect(await sessionsInDoubt(book, today)).toHaveLength(2);
  for (const id of [sessionId, split.sessionId])
    await changeSessionDate(book, {
      sessionId: id,
      date: today,
      startedAt: Date.parse(today),
      isTimeOfDayKnown: false,
    });
  expect(await sessionsInDoubt(book, today)).toEqual([]);
  const { points } = await askHere(book, "comboReview", { comboId, period: {}, today });
  expect(points).toHaveLength(12);
  book.close();
});

test("a session dated tomorrow counts: somewhere it was driven on that day", async () => {
  const { book, comboId } = await months();
  await addSessions(book, comboId, [{ date: "2026-03-11", laps }]);
  const { points } = await askHere(book, "comboReview", { comboId, period: {}, today });
  expect(points.at(-1)?.date).toBe("2026-03-11");
  expect(await sessionsInDoubt(book, today)).toEqual([]);
  book.close();
});

test("a session dated 2036 is not the last one, and hides none", async () => {
  const { book, comboId, last } = await months();
  const other = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Tessemoor" } });
  const [ahead = ""] = await addSessions(book, other.comboId, [{ date: "2036-03-04", laps }]);
  expect((await sessionsInDoubt(book, today)).map(({ id }) => id)).toEqual([ahead]);
  expect((await lastSession(book, until))?.id).toBe(last);
  expect((await recentSessions(book, 20, until)).map(({ id }) => id)).not.toContain(ahead);
  const driven = await lastDriven(book, [comboId, other.comboId], until);
  expect(driven.get(other.comboId)).toBe(0);
  expect(driven.get(comboId)).toBeGreaterThan(0);
  expect([...(await daysDriven(book, until)).values()]).toEqual([today]);
  expect([...(await sessionsSince(book, 0, until))]).toEqual([[comboId, 9]]);
  book.close();
});

test("a session dated 2036 is the last one where there is no other", async () => {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const [ahead] = await addSessions(book, comboId, [{ date: "2036-03-04", laps }]);
  expect((await lastSession(book, until))?.id).toBe(ahead);
  book.close();
});

test("an open session dated 2036 comes after the one that is driven now", async () => {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const start = (date: string) =>
    startSession(book, { comboId, date, zone: "Europe/Berlin", startedAt: Date.parse(date) });
  const [ahead, now] = [await start("2036-03-04"), await start(today)];
  expect((await sessionsOpen(book, until)).map(({ id }) => id)).toEqual([now.sessionId, ahead.sessionId]);
  book.close();
});

test("figures are asked for again when a row changes beside one of 2036", async () => {
  const { book, comboId } = await months();
  const mark = () => markOf(book, "comboReview", { comboId, period: {}, today });
  await turnPage(book, { comboIds: "all", from: Date.UTC(2036, 2, 4), reason: "typed under a wrong clock" });
  const before = await mark();
  await turnPage(book, { comboIds: "all", from: Date.UTC(2026, 2, 1), reason: "new tyre model" });
  expect(await mark()).not.toBe(before);
  book.close();
});
