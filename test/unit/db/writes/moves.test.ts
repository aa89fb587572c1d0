import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addLaps,
  addRun,
  changeSessionDate,
  combosWithNames,
  comboWithNames,
  deleteLap,
  deleteRun,
  deleteSession,
  dump,
  editRun,
  editSession,
  endRun,
  endSession,
  moveLaps,
  moveLapsToCombo,
  moveRunToCombo,
  moveRunToSession,
  moveSessionToCombo,
  runOf,
  runsOfSession,
  sessionOf,
  sessionsOfCombo,
  splitRun,
  splitSession,
  startSession,
  turnPage,
  undoChange,
} from "#db";
import { lapsInOrder } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

const minute = 60_000;

async function withLaps(count = 4) {
  const open = await anOpenSession();
  const { book, clock, runId } = open;
  const ids = Array.from({ length: count }, () => book.newId());
  for (const [at, id] of ids.entries()) {
    clock.pass(90_000);
    await addLap(book, { runId, id, lap: aLap(84_000 + at) });
  }
  const { comboId: other } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  const timesOf = async (id: string) =>
    lapsInOrder((await runOf(book, id)) ?? { laps: [] }).map(({ ms }) => ms);
  return { ...open, ids, other, timesOf };
}

test("a run moved to another combo makes a session like its own: same day, zone and focus, its own note empty", async () => {
  const { book, clock, sessionId, runId, other, comboId } = await withLaps();
  await editSession(book, { sessionId, patch: { focus: "kerbs", note: "windy", targetMs: 83_000 } });
  const born = (await sessionOf(book, sessionId))?.createdAt;
  const begun = (await runOf(book, runId))?.startedAt;
  clock.pass(minute);
  await endSession(book, { sessionId });
  clock.pass(minute);
  const change = await moveRunToCombo(book, { runId, comboId: other });
  expect(change.what).toBe("Run 1 moved");
  const made = await sessionOf(book, change.sessionId);
  expect(made).toMatchObject({
    comboId: other,
    startedAt: begun,
    endedAt: clock.now() - minute,
    date: "2026-03-10",
    zone: "Europe/Berlin",
    isTimeOfDayKnown: true,
    focus: "kerbs",
    note: "",
    createdAt: born,
    updatedAt: clock.now(),
  });
  expect(made).not.toHaveProperty("targetMs");
  expect(await runOf(book, runId)).toMatchObject({ comboId: other, n: 1 });
  expect(await sessionsOfCombo(book, comboId)).toHaveLength(1);
});

test("a run of an open session makes an open one, and does not join a session of another day or a deleted one", async () => {
  const { book, runId, other } = await withLaps();
  await startSession(book, { comboId: other, date: "2026-03-09", zone: "UTC" });
  const gone = await startSession(book, { comboId: other, date: "2026-03-10", zone: "UTC" });
  await deleteSession(book, { sessionId: gone.sessionId });
  const change = await moveRunToCombo(book, { runId, comboId: other });
  const made = await sessionOf(book, change.sessionId);
  expect(made?.date).toBe("2026-03-10");
  expect(made).not.toHaveProperty("endedAt");
  await expect(moveRunToCombo(book, { runId, comboId: book.newId() })).rejects.toMatchObject({
    code: "missing",
  });
});

test("a run moved within its combo does not stay in the session it is to leave", async () => {
  const { book, sessionId, comboId } = await withLaps();
  const { runId: second } = await addRun(book, { sessionId });
  const change = await moveRunToCombo(book, { runId: second, comboId });
  expect(change.sessionId).not.toBe(sessionId);
  expect(await sessionsOfCombo(book, comboId)).toHaveLength(2);
});

test("a run moved to another session goes behind its last one, also one that was deleted", async () => {
  const { book, sessionId, runId, other } = await withLaps();
  const there = await startSession(book, { comboId: other, date: "2026-03-09", zone: "UTC" });
  const { runId: last } = await addRun(book, { sessionId: there.sessionId });
  await deleteRun(book, { runId: last });
  const change = await moveRunToSession(book, { runId, sessionId: there.sessionId });
  expect(change.what).toBe("Run 1 moved");
  expect(await runOf(book, runId)).toMatchObject({ sessionId: there.sessionId, comboId: other, n: 3 });
  await expect(moveRunToSession(book, { runId, sessionId: book.newId() })).rejects.toMatchObject({
    code: "missing",
  });
  expect(await runsOfSession(book, sessionId)).toEqual([]);
});

test("one lap that moves is one lap; laps go in their order to the end of the run, and stay where they are sent", async () => {
  const { book, sessionId, runId, ids, timesOf } = await withLaps();
  const { runId: second } = await addRun(book, { sessionId });
  await addLap(book, { runId: second, id: book.newId(), lap: aLap(90_000) });
  const one = await moveLaps(book, { from: runId, lapIds: [ids[0] ?? ""], to: { runId: second } });
  expect(one).toMatchObject({ what: "1 lap moved", runId: second });
  await moveLaps(book, { from: runId, lapIds: [ids[3] ?? "", ids[1] ?? ""], to: { runId: second } });
  expect(await timesOf(second)).toEqual([90_000, 84_000, 84_001, 84_003]);
  expect(await timesOf(runId)).toEqual([84_002]);
  const places = lapsInOrder((await runOf(book, second)) ?? { laps: [] }).map(({ n }) => n);
  expect(places).toEqual([1, 2, 3, 4]);
});

test("laps are put in another order within their run", async () => {
  const { book, runId, ids, timesOf } = await withLaps();
  const after = (afterLapId: string, ...lapIds: string[]) =>
    moveLaps(book, { from: runId, lapIds, to: { runId, afterLapId } });
  await after(ids[3] ?? "", ids[0] ?? "");
  expect(await timesOf(runId)).toEqual([84_001, 84_002, 84_003, 84_000]);
  await after(ids[1] ?? "", ids[0] ?? "", ids[3] ?? "");
  expect(await timesOf(runId)).toEqual([84_001, 84_003, 84_000, 84_002]);
  const laps = lapsInOrder((await runOf(book, runId)) ?? { laps: [] });
  const [from = 0, , , to = 0] = laps.map(({ n }) => n);
  expect(laps.map(({ n }) => n)).toEqual([from, from + (to - from) / 3, from + (2 * (to - from)) / 3, to]);
});

test("laps go behind the last place of a run, also where that is a deleted lap's", async () => {
  const { book, sessionId, runId, ids } = await withLaps();
  const { runId: second } = await addRun(book, { sessionId });
  const last = book.newId();
  for (const id of [book.newId(), last]) await addLap(book, { runId: second, id, lap: aLap(90_000) });
  await deleteLap(book, { runId: second, lapId: last });
  await moveLaps(book, { from: runId, lapIds: ids.slice(0, 1), to: { runId: second } });
  expect(lapsInOrder((await runOf(book, second)) ?? { laps: [] }).map(({ n }) => n)).toEqual([1, 3]);
});

test("a new run of moved laps is of the kind and effort of the run they leave; open, it begins now", async () => {
  const { book, clock, sessionId, runId, ids } = await withLaps();
  await editRun(book, { runId, patch: { kind: "drill", effort: "learning", tyres: "soft" } });
  clock.pass(minute);
  const { runId: fresh } = await moveLaps(book, {
    from: runId,
    lapIds: ids.slice(2),
    to: { newRunIn: sessionId },
  });
  const made = await runOf(book, fresh);
  expect(made).toMatchObject({
    kind: "drill",
    effort: "learning",
    tyres: "soft",
    n: 2,
    startedAt: clock.now(),
  });
  expect(made).not.toHaveProperty("endedAt");
  expect(made).not.toHaveProperty("guest");
});

test("laps moved to another session of the same day are of the times of their run, begun or over", async () => {
  const { book, clock, runId, ids, other } = await withLaps();
  const begun = (await runOf(book, runId))?.startedAt;
  const there = await startSession(book, { comboId: other, date: "2026-03-10", zone: "UTC" });
  const to = { newRunIn: there.sessionId };
  clock.pass(minute);
  const { runId: fresh } = await moveLaps(book, { from: runId, lapIds: ids.slice(0, 1), to });
  expect(await runOf(book, fresh)).toMatchObject({ startedAt: begun, endedAt: clock.now() });
  await endRun(book, { runId });
  clock.pass(minute);
  const { runId: later } = await moveLaps(book, { from: runId, lapIds: ids.slice(1, 2), to });
  expect(await runOf(book, later)).toMatchObject({ startedAt: begun, endedAt: clock.now() - minute });
});

test("a session made for moved laps is over when their run is, or now", async () => {
  const { book, clock, runId, ids, other } = await withLaps();
  const run = await runOf(book, runId);
  clock.pass(minute);
  const first = await moveLapsToCombo(book, { from: runId, lapIds: ids.slice(0, 1), comboId: other });
  expect(await sessionOf(book, first.sessionId)).toMatchObject({
    startedAt: run?.startedAt,
    endedAt: clock.now(),
    createdAt: run?.createdAt,
  });
  await expect(
    moveLapsToCombo(book, { from: runId, lapIds: ids, comboId: book.newId() }),
  ).rejects.toMatchObject({ code: "missing" });
});

test("a session dated anew takes its own fields along; unmoved in time, its runs stay, and so do pages", async () => {
  const { book, clock, sessionId, runId, comboId } = await withLaps();
  const session = await sessionOf(book, sessionId);
  const startedAt = session?.startedAt ?? 0;
  await turnPage(book, { comboIds: [comboId], from: startedAt, reason: "new" });
  const turned = (await dump(book)).pages;
  const run = await runOf(book, runId);
  clock.pass(minute);
  const change = await changeSessionDate(book, {
    sessionId,
    date: "2026-03-09",
    startedAt,
    isTimeOfDayKnown: false,
    zone: "Asia/Tokyo",
  });
  expect(change.what).toBe("Date of the session changed");
  const now = await sessionOf(book, sessionId);
  expect(now).toMatchObject({ date: "2026-03-09", startedAt, isTimeOfDayKnown: false, zone: "Asia/Tokyo" });
  expect(now).not.toHaveProperty("endedAt");
  expect(await runOf(book, runId)).toEqual(run);
  expect((await dump(book)).pages).toEqual(turned);
  await changeSessionDate(book, {
    sessionId,
    date: "2026-03-11",
    startedAt: startedAt + 5,
    isTimeOfDayKnown: true,
  });
  expect(await runOf(book, runId)).toMatchObject({ startedAt: (run?.startedAt ?? 0) + 5 });
  expect(await runOf(book, runId)).not.toHaveProperty("endedAt");
  expect((await dump(book)).pages.map(({ from }) => from)).toEqual([startedAt]);
});

test("a session moved to another combo says so, and its deleted runs stay where they were", async () => {
  const { book, sessionId, runId, comboId, other } = await withLaps();
  const { runId: second } = await addRun(book, { sessionId });
  await deleteRun(book, { runId });
  const change = await moveSessionToCombo(book, { sessionId, comboId: other });
  expect(change.what).toBe("Session moved to another combo");
  expect((await runOf(book, second))?.comboId).toBe(other);
  expect((await book.tables.runs.get(runId))?.comboId).toBe(comboId);
  await expect(moveSessionToCombo(book, { sessionId, comboId: book.newId() })).rejects.toMatchObject({
    code: "missing",
  });
});

const kart = { car: { name: "Kart" }, track: { name: "Sand Hollow" } };

test("a session moves to a combo that is made for it, and Undo takes that away again", async () => {
  const { book, sessionId, comboId } = await withLaps();
  const change = await moveSessionToCombo(book, { sessionId, combo: kart });
  const session = await sessionOf(book, sessionId);
  expect((await comboWithNames(book, session?.comboId ?? ""))?.car.name).toBe("Kart");
  await undoChange(book, change);
  expect((await sessionOf(book, sessionId))?.comboId).toBe(comboId);
  expect((await combosWithNames(book)).map(({ car }) => car.name)).not.toContain("Kart");
});

test("a combo named wrong at the start of a session goes when the session leaves it, and comes back by Undo", async () => {
  const { book, clock } = await aLogbook();
  const on = { date: "2026-03-10", zone: "Europe/Berlin" };
  const { sessionId } = await startSession(book, { combo: kart, ...on });
  clock.pass(minute);
  const names = async () => {
    const { cars, tracks, layouts } = await dump(book);
    const live = [...cars, ...tracks, ...layouts].filter(({ deletedAt }) => deletedAt === undefined);
    return [...live.map(({ name }) => name), ...(await combosWithNames(book)).map(({ combo }) => combo.id)];
  };
  const before = await names();
  const right = { car: { name: "Cart" }, track: { name: "Sand Hollow" } };
  const change = await moveSessionToCombo(book, { sessionId, combo: right });
  expect(await names()).toEqual(expect.arrayContaining(["Cart", "Sand Hollow"]));
  expect(await names()).not.toContain("Kart");
  expect(await combosWithNames(book)).toHaveLength(1);
  await undoChange(book, change);
  expect(await names()).toEqual(before);
});

test("a combo that a session leaves stays where another session, or a page of it, needs it", async () => {
  const { book, clock } = await aLogbook();
  const on = { date: "2026-03-10", zone: "Europe/Berlin" };
  const { sessionId } = await startSession(book, { combo: kart, ...on });
  clock.pass(minute);
  await startSession(book, { combo: kart, ...on });
  await moveSessionToCombo(book, { sessionId, combo: { ...kart, car: { name: "Cart" } } });
  expect((await combosWithNames(book)).map(({ car }) => car.name).toSorted()).toEqual(["Cart", "Kart"]);
});

test("a run moves to a combo that is made for it", async () => {
  const { book, runId } = await withLaps();
  const { sessionId } = await moveRunToCombo(book, { runId, combo: kart });
  const comboId = (await sessionOf(book, sessionId))?.comboId ?? "";
  expect((await comboWithNames(book, comboId))?.track.name).toBe("Sand Hollow");
  expect((await runOf(book, runId))?.comboId).toBe(comboId);
});

test("an ended session split at a run: the first part ends with the run before, the second as the whole did", async () => {
  const { book, clock, sessionId, runId } = await withLaps();
  await editSession(book, { sessionId, patch: { focus: "kerbs", note: "windy" } });
  const runEnd = clock.now() + minute;
  await endRun(book, { runId, at: runEnd });
  clock.pass(10 * minute);
  const { runId: second } = await addRun(book, { sessionId });
  const { runId: third } = await addRun(book, { sessionId });
  const begun = (await runOf(book, second))?.startedAt;
  clock.pass(minute);
  await endSession(book, { sessionId });
  const old = await sessionOf(book, sessionId);
  clock.pass(minute);
  const change = await splitSession(book, { sessionId, fromRunId: second });
  expect(change.what).toBe("Session split");
  expect(await sessionOf(book, sessionId)).toMatchObject({ endedAt: runEnd, note: "windy" });
  expect(await sessionOf(book, change.sessionId)).toMatchObject({
    comboId: old?.comboId,
    startedAt: begun,
    endedAt: old?.endedAt,
    date: "2026-03-10",
    zone: "Europe/Berlin",
    isTimeOfDayKnown: true,
    focus: "kerbs",
    note: "",
    createdAt: old?.createdAt,
  });
  expect((await runsOfSession(book, change.sessionId)).map(({ id, n }) => [id, n])).toEqual([
    [second, 1],
    [third, 2],
  ]);
});

test("the first part of a split session ends with its last lap where its run was never ended", async () => {
  const { book, clock, sessionId, runId } = await withLaps();
  const lastLap = clock.now();
  const { runId: second } = await addRun(book, { sessionId });
  await editRun(book, { runId, patch: { endedAt: undefined } });
  clock.pass(minute);
  const { sessionId: added } = await splitSession(book, { sessionId, fromRunId: second });
  expect((await sessionOf(book, sessionId))?.endedAt).toBe(lastLap);
  expect(await sessionOf(book, added)).not.toHaveProperty("endedAt");
});

test("a session split inside a run: the later runs follow behind the laps that go", async () => {
  const { book, clock, sessionId, runId, ids, timesOf } = await withLaps();
  const begun = (await runOf(book, runId))?.startedAt ?? 0;
  const end = clock.now();
  await endRun(book, { runId });
  const { runId: second } = await addRun(book, { sessionId });
  clock.pass(minute);
  const split = await splitSession(book, { sessionId, fromRunId: runId, fromLapId: ids[2] ?? "" });
  const cut = begun + 84_000 + 84_001;
  expect(await sessionOf(book, sessionId)).toMatchObject({ endedAt: cut });
  expect(await sessionOf(book, split.sessionId)).toMatchObject({ startedAt: cut });
  expect(await runOf(book, runId)).toMatchObject({ endedAt: cut, n: 1 });
  const [first, later] = await runsOfSession(book, split.sessionId);
  expect(first).toMatchObject({ n: 1, startedAt: cut, endedAt: end });
  expect(later).toMatchObject({ id: second, n: 2 });
  expect(await timesOf(first?.id ?? "")).toEqual([84_002, 84_003]);
});

test("a split at a lap is never later than the end of its run, nor is one at a first lap of a later run inside it", async () => {
  const { book, sessionId, runId, ids } = await withLaps();
  const begun = (await runOf(book, runId))?.startedAt ?? 0;
  await endRun(book, { runId, at: begun + 1000 });
  const split = await splitSession(book, { sessionId, fromRunId: runId, fromLapId: ids[3] ?? "" });
  expect((await sessionOf(book, split.sessionId))?.startedAt).toBe(begun + 1000);

  const next = await withLaps();
  const { runId: second } = await addRun(next.book, { sessionId: next.sessionId });
  const laps = [next.book.newId(), next.book.newId()];
  await addLaps(next.book, { runId: second, laps: laps.map((id) => ({ id, lap: aLap(90_000) })) });
  const at = { sessionId: next.sessionId, fromRunId: second, fromLapId: laps[0] ?? "" };
  const whole = await splitSession(next.book, at);
  expect((await runsOfSession(next.book, whole.sessionId)).map(({ id }) => id)).toEqual([second]);
  await expect(splitSession(next.book, { ...at, fromRunId: next.book.newId() })).rejects.toMatchObject({
    message:
      "Nothing was changed: a session is split at its second lap or a later one, and that lap must still be there.",
  });
});

test("a run split at a lap whose clock went back ends and begins at its start; one that cannot be split says why", async () => {
  const { book, clock, runId, ids } = await withLaps(2);
  const begun = (await runOf(book, runId))?.startedAt ?? 0;
  clock.set(begun - 60 * minute);
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(84_000) });
  const why = "Nothing was changed: a run is split while it is driven, at its second lap or a later one.";
  for (const lapId of [ids[0] ?? "", book.newId()])
    await expect(splitRun(book, { runId, lapId })).rejects.toMatchObject({ code: "invalid", message: why });
  const change = await splitRun(book, { runId, lapId: id });
  const lastTyped = begun + 180_000;
  expect(await runOf(book, runId)).toMatchObject({ endedAt: lastTyped });
  expect(await runOf(book, change.runId)).toMatchObject({ startedAt: lastTyped, laps: [{ id }] });
});

test("a session split inside its first run takes all later runs along, and only those", async () => {
  const { book, sessionId, runId, ids } = await withLaps();
  const { runId: second } = await addRun(book, { sessionId });
  const { runId: third } = await addRun(book, { sessionId });
  const split = await splitSession(book, { sessionId, fromRunId: runId, fromLapId: ids[1] ?? "" });
  const runs = await runsOfSession(book, split.sessionId);
  expect(runs.map(({ id, n }) => [id, n]).slice(1)).toEqual([
    [second, 2],
    [third, 3],
  ]);
  expect((await runsOfSession(book, sessionId)).map(({ id }) => id)).toEqual([runId]);
});

test("a session split inside a later run leaves the earlier ones where they are", async () => {
  const { book, sessionId, runId } = await withLaps();
  const { runId: second } = await addRun(book, { sessionId });
  const laps = [book.newId(), book.newId()] as const;
  await addLaps(book, { runId: second, laps: laps.map((id) => ({ id, lap: aLap(90_000) })) });
  const { runId: third } = await addRun(book, { sessionId });
  const split = await splitSession(book, { sessionId, fromRunId: second, fromLapId: laps[1] });
  expect((await runsOfSession(book, sessionId)).map(({ id }) => id)).toEqual([runId, second]);
  const runs = await runsOfSession(book, split.sessionId);
  expect(runs.map(({ n }) => n)).toEqual([1, 2]);
  expect(runs[1]?.id).toBe(third);
});

test("a run goes behind the last of many runs", async () => {
  const { book, runId, other } = await withLaps();
  const there = await startSession(book, { comboId: other, date: "2026-03-09", zone: "UTC" });
  for (let n = 2; n <= 4; n += 1) await addRun(book, { sessionId: there.sessionId });
  await moveRunToSession(book, { runId, sessionId: there.sessionId });
  expect((await runOf(book, runId))?.n).toBe(5);
});

test("a run moved to another combo joins none of the evenings of an older combo on that day", async () => {
  const { book, comboId, runId, other } = await withLaps();
  const second = await startSession(book, { comboId, date: "2026-03-10", zone: "UTC" });
  const { sessionId } = await moveRunToCombo(book, { runId, comboId: other });
  expect(sessionId).not.toBe(second.sessionId);
  expect((await sessionOf(book, sessionId))?.comboId).toBe(other);
});
