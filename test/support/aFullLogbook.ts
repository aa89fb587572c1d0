import {
  addCornerReview,
  addLap,
  addPlan,
  addReference,
  addRig,
  addRigTest,
  addRun,
  addSummaryRun,
  deleteLap,
  deleteRun,
  editCar,
  editLayout,
  editRun,
  endSession,
  setLowestSpeed,
  setPractice,
  setPreferences,
  setTarget,
  turnPage,
} from "#db";
import { addForecast } from "./addForecast.ts";
import { aLap } from "./aLap.ts";
import { anOpenSession } from "./aLogbook.ts";

/** A small logbook with a row in every table, a deleted lap and a deleted run. */
export async function aFullLogbook() {
  const open = await anOpenSession();
  const { book, clock, comboId, sessionId, runId } = open;
  const on = "2026-03-10";
  await setPreferences(book, { settlingLaps: 1, displayDecimals: 2 });
  const layout = await book.tables.layouts.toCollection().first();
  await editLayout(book, {
    layoutId: layout?.id ?? "",
    patch: {
      sectors: 3,
      length: 2740,
      corners: [
        { number: 5, name: "Mill", direction: "left", radius: 38.5, bend: "slow", after: "long", sector: 2 },
        { number: 6, afterLength: 120, kerbs: { exit: 1 } },
      ],
    },
  });
  const car = await book.tables.cars.toCollection().first();
  await editCar(book, { carId: car?.id ?? "", patch: { width: 1.75, grip: 1.2, topSpeed: 55 } });
  await setLowestSpeed(book, { comboId, number: 5, speed: 22.5 });
  const parts = {
    view: { degrees: 52, axis: "vertical" },
    wheel: { gainPercent: 65 },
    pedals: {},
    seat: {},
  } as const;
  const { id: rigA } = await addRig(book, {
    from: on,
    name: "near",
    screen: { kind: "flat", width: 0.6 },
    ...parts,
    note: "",
  });
  const { id: rigB } = await addRig(book, {
    from: on,
    name: "far",
    screen: { kind: "three" },
    ...parts,
    note: "é ÷ 走",
  });
  await editRun(book, { runId, patch: { rigId: rigA, tyres: "soft", fuelLitres: 12.5, guest: undefined } });
  const lapId = book.newId();
  await addLap(book, {
    runId,
    id: lapId,
    lap: aLap(83456, { sectors: [27100, 31456, 24900], sectorDecimals: [2, 3, 1] }),
  });
  clock.pass(83_456);
  await addLap(book, {
    runId,
    id: book.newId(),
    lap: { source: "typed", remarks: [{ kind: "off", corner: 5 }] },
  });
  await addLap(book, {
    runId,
    id: book.newId(),
    lap: aLap(83400, { decimals: 1, source: "memory", note: "“maybe”" }),
  });
  await deleteLap(book, { runId, lapId });
  const { runId: second } = await addRun(book, { sessionId });
  await deleteRun(book, { runId: second });
  await addSummaryRun(book, { sessionId, summary: { laps: 9, bestMs: 83100, bestDecimals: 1, off: 1 } });
  await turnPage(book, { comboIds: [comboId], from: clock.now(), reason: "new surface" });
  await addReference(book, { comboId, ms: 82000, decimals: 3, source: "a friend" });
  const { id: targetId } = await setTarget(book, {
    comboId,
    kind: "best",
    value: 82500,
    setOn: on,
    by: "2026-04-30",
  });
  await addForecast(book, {
    targetId,
    comboId,
    madeOn: on,
    by: "2026-04-30",
    chance: 0.4,
    method: "curve 1",
  });
  await addRigTest(book, {
    comboId,
    question: "Is far better?",
    rigA,
    rigB,
    pairsPlanned: 6,
    level: 0.9,
    seed: 7,
    pairs: [{ first: "B", runA: runId }],
  });
  await addCornerReview(book, {
    comboId,
    sessionId,
    on,
    corners: [{ number: 5, entry: 0.5, apex: 1.25, exit: -0.25, braking: "early" }],
  });
  await setPractice(book, { comboId, practice: { sessionsAWeek: 3 } });
  await addPlan(book, {
    comboId,
    minutes: 45,
    lines: [{ id: book.newId(), purpose: "warm up", laps: 4, kind: "warm-up", effort: "easy" }],
  });
  await endSession(book, { sessionId, note: "brake earlier" });
  return open;
}
