import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo, addLap, addRun, deleteRun, deleteSession, editRun, editSession, startSession } from "#db";
import { askHere } from "#live";
import { markOf } from "../../../../src/live/jobs/markOf.ts";
import { addSessions } from "../../../support/addSessions.ts";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const laps = [84_000, 84_100, 84_200, 84_300];

async function filled(count: number) {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const days = Array.from({ length: count }, (_, n) => ({
    date: new Date(Date.UTC(2025, 0, 1 + n)).toISOString().slice(0, 10),
    laps: laps.map((ms) => ms + n),
    note: n % 2 === 0 ? "even day" : "odd day",
  }));
  return { book, sessions: await addSessions(book, comboId, days) };
}

test("gives the newest, and the number of all that was found", async () => {
  const { book } = await filled(8);
  const found = await askHere(book, "search", { terms: { longest: 84_003 }, most: 3 });
  expect([found.sessionCount, found.lapCount]).toEqual([4, 4]);
  expect(found.sessions.map(({ date }) => date)).toEqual(["2025-01-04", "2025-01-03", "2025-01-02"]);
  expect(found.laps.map(({ ms, runNumber, lapNumber }) => [ms, runNumber, lapNumber])).toEqual([
    [84_003, 1, 1],
    [84_002, 1, 1],
    [84_001, 1, 1],
  ]);
  book.close();
});

test("goes through more sessions than are read at once", async () => {
  const { book } = await filled(230);
  const found = await askHere(book, "search", { terms: { words: "EVEN hatch" }, most: 50 });
  expect([found.sessionCount, found.sessions.length, found.lapCount]).toEqual([115, 50, 0]);
  book.close();
});

test("a deleted run is not found, a session without runs still is", async () => {
  const { book, sessions } = await filled(1);
  const run = await book.tables.runs.toCollection().first();
  await deleteRun(book, { runId: run?.id ?? "" });
  expect(await askHere(book, "search", { terms: { shortest: 1 }, most: 5 })).toMatchObject({ lapCount: 0 });
  const byNote = await askHere(book, "search", { terms: { words: "even" }, most: 5 });
  expect(byNote.sessions.map(({ sessionId, laps: n }) => [sessionId, n])).toEqual([[sessions[0], 0]]);
  book.close();
});

test("a changed note alone asks for a new search", async () => {
  const { book, sessions } = await filled(2);
  const details = { terms: { words: "late" }, most: 5 };
  const before = await markOf(book, "search", details);
  await editSession(book, { sessionId: sessions[0] ?? "", patch: { note: "late apex" } });
  expect(await markOf(book, "search", details)).not.toBe(before);
  expect(await askHere(book, "search", details)).toMatchObject({ sessionCount: 1 });
  book.close();
});

test("a lap is found with its run, its place, its remarks and its note, and a session with all that was driven in it", async () => {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const { sessionId, runId } = await startSession(book, {
    comboId,
    date: "2026-03-10",
    zone: "UTC",
    focus: "braking",
  });
  await editSession(book, { sessionId, patch: { note: "wind from the west" } });
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  const second = await addRun(book, { sessionId });
  const id = book.newId();
  const untimed = book.newId();
  const told = { decimals: 1, remarks: [{ kind: "off" }], note: "late at the hairpin" } as const;
  await addLap(book, { runId: second.runId, id: book.newId(), lap: aLap(84_100) });
  await addLap(book, { runId: second.runId, id, lap: aLap(84_900, told) });
  await addLap(book, {
    runId: second.runId,
    id: untimed,
    lap: { source: "typed", remarks: [{ kind: "off" }] },
  });
  expect(await askHere(book, "search", { terms: { remark: "off" }, most: 5 })).toEqual({
    sessions: [
      {
        sessionId,
        date: "2026-03-10",
        comboName: "Varnholt Ring · club hatch",
        focus: "braking",
        note: "wind from the west",
        laps: 4,
        found: 2,
      },
    ],
    sessionCount: 1,
    laps: [
      {
        sessionId,
        lapId: id,
        date: "2026-03-10",
        comboName: "Varnholt Ring · club hatch",
        runNumber: 2,
        lapNumber: 2,
        ms: 84_900,
        decimals: 1,
        remarks: [{ kind: "off" }],
        note: "late at the hairpin",
        guest: undefined,
      },
      {
        sessionId,
        lapId: untimed,
        date: "2026-03-10",
        comboName: "Varnholt Ring · club hatch",
        runNumber: 2,
        lapNumber: 3,
        ms: undefined,
        decimals: 3,
        remarks: [{ kind: "off" }],
        note: undefined,
        guest: undefined,
      },
    ],
    lapCount: 2,
  });
  book.close();
});

test("a guest's laps are found under their name, and are none of the session's laps", async () => {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const { sessionId, runId } = await startSession(book, { comboId, date: "2026-03-10", zone: "UTC" });
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  const second = await addRun(book, { sessionId });
  await editRun(book, { runId: second.runId, patch: { guest: "a neighbour" } });
  await addLap(book, { runId: second.runId, id: book.newId(), lap: aLap(84_100) });
  const found = await askHere(book, "search", { terms: { shortest: 1 }, most: 5 });
  expect(found.sessions).toMatchObject([{ laps: 1, found: 2 }]);
  expect(found.laps.map(({ ms, guest }) => [ms, guest])).toEqual([
    [84_000, undefined],
    [84_100, "a neighbour"],
  ]);
  book.close();
});

test("a deleted session is not found, nor one of another focus or day", async () => {
  const { book, sessions } = await filled(4);
  await deleteSession(book, { sessionId: sessions[3] ?? "" });
  await editSession(book, { sessionId: sessions[0] ?? "", patch: { focus: "braking" } });
  const dates = async (terms: object) =>
    (await askHere(book, "search", { terms, most: 5 })).sessions.map(({ date }) => date);
  expect(await dates({})).toEqual(["2025-01-03", "2025-01-02", "2025-01-01"]);
  expect(await dates({ focus: "braking" })).toEqual(["2025-01-01"]);
  expect(await dates({ from: "2025-01-02", to: "2025-01-03" })).toEqual(["2025-01-03", "2025-01-02"]);
  book.close();
});

test("of one day the session begun last comes first", async () => {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Varnholt Ring" } });
  const day = { date: "2026-03-09", laps };
  const [a, b, c] = await addSessions(book, comboId, [day, { ...day, date: "2026-03-10" }, day]);
  const { sessions } = await askHere(book, "search", { terms: {}, most: 5 });
  expect(sessions.map(({ sessionId }) => sessionId)).toEqual([b, c, a]);
  book.close();
});
