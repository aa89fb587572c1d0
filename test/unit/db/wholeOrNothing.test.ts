import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addLaps,
  addRig,
  addRun,
  type Change,
  changeSessionDate,
  deleteLap,
  deleteRun,
  deleteSession,
  dump,
  editLap,
  editLayout,
  editRun,
  editSession,
  endSession,
  joinCombos,
  joinTracks,
  LedgerFault,
  type Logbook,
  mergeInto,
  moveLaps,
  moveLapsToCombo,
  moveRunToCombo,
  moveSessionToCombo,
  setPreferences,
  setTarget,
  splitRun,
  splitSession,
  startSession,
  turnPage,
  undoChange,
} from "#db";
import { aLap } from "../../support/aLap.ts";
import { anOpenSession } from "../../support/aLogbook.ts";
import { failingStore } from "../../support/failingStore.ts";

interface Scene {
  readonly book: Logbook;
  readonly comboId: string;
  readonly otherId: string;
  readonly sessionId: string;
  readonly runId: string;
  readonly secondId: string;
  readonly lapId: string;
  readonly laterId: string;
  readonly last: Change;
}

async function aScene(): Promise<Scene> {
  const { book, ...ids } = await anOpenSession();
  const { comboId: otherId } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  await startSession(book, { comboId: otherId, date: "2026-03-09", zone: "UTC", endedAt: book.clock() });
  const lapId = book.newId();
  await addLap(book, { runId: ids.runId, id: lapId, lap: aLap(83000) });
  const { runId: secondId } = await addRun(book, { sessionId: ids.sessionId });
  await addLap(book, { runId: secondId, id: book.newId(), lap: aLap(83100) });
  const laterId = book.newId();
  const last = await addLap(book, { runId: secondId, id: laterId, lap: aLap(83200) });
  return { book, ...ids, otherId, secondId, lapId, laterId, last };
}

const writes: Readonly<Record<string, (scene: Scene) => Promise<unknown>>> = {
  addCombo: ({ book }) =>
    addCombo(book, { car: { name: "New" }, track: { name: "New" }, layout: { name: "Short" } }),
  startSession: ({ book, comboId }) => startSession(book, { comboId, date: "2026-03-11", zone: "UTC" }),
  editSession: ({ book, sessionId }) => editSession(book, { sessionId, patch: { focus: "braking" } }),
  endSession: ({ book, sessionId }) => endSession(book, { sessionId }),
  changeSessionDate: ({ book, sessionId }) =>
    changeSessionDate(book, { sessionId, date: "2026-03-01", startedAt: 1e12, isTimeOfDayKnown: true }),
  moveSessionToCombo: ({ book, sessionId, otherId }) =>
    moveSessionToCombo(book, { sessionId, comboId: otherId }),
  splitRun: ({ book, secondId, laterId }) => splitRun(book, { runId: secondId, lapId: laterId }),
  splitSession: ({ book, sessionId, secondId }) => splitSession(book, { sessionId, fromRunId: secondId }),
  deleteSession: ({ book, sessionId }) => deleteSession(book, { sessionId }),
  addRun: ({ book, sessionId }) => addRun(book, { sessionId }),
  editRun: ({ book, runId }) => editRun(book, { runId, patch: { tyres: "hard" } }),
  deleteRun: ({ book, runId }) => deleteRun(book, { runId }),
  moveRunToCombo: ({ book, runId, otherId }) => moveRunToCombo(book, { runId, comboId: otherId }),
  addLap: ({ book, runId }) => addLap(book, { runId, id: book.newId(), lap: aLap(83000) }),
  addLaps: ({ book, runId }) => addLaps(book, { runId, laps: [{ id: book.newId(), lap: aLap(83000) }] }),
  editLap: ({ book, runId, lapId }) => editLap(book, { runId, lapId, patch: { ms: 82000 } }),
  deleteLap: ({ book, runId, lapId }) => deleteLap(book, { runId, lapId }),
  moveLapsToCombo: ({ book, runId, lapId, otherId }) =>
    moveLapsToCombo(book, { from: runId, lapIds: [lapId], comboId: otherId }),
  moveLaps: ({ book, runId, lapId, sessionId }) =>
    moveLaps(book, { from: runId, lapIds: [lapId], to: { newRunIn: sessionId } }),
  turnPage: ({ book }) => turnPage(book, { comboIds: "all", from: 1e12, reason: "new tyres" }),
  setTarget: ({ book, comboId }) =>
    setTarget(book, { comboId, kind: "best", value: 82000, setOn: "2026-03-10" }),
  addRig: ({ book }) =>
    addRig(book, {
      from: "2026-03-10",
      name: "",
      screen: {},
      view: {},
      wheel: {},
      pedals: {},
      seat: {},
      note: "",
    }),
  setPreferences: ({ book }) => setPreferences(book, { settlingLaps: 2 }),
  editLayout: async ({ book }) => {
    const layout = (await dump(book)).layouts[0];
    return editLayout(book, { layoutId: layout?.id ?? "", patch: { sectors: 3 } });
  },
  joinCombos: ({ book, comboId, otherId }) => joinCombos(book, { keepId: comboId, dropId: otherId }),
  joinTracks: async ({ book }) => {
    const [keep, drop] = (await dump(book)).tracks;
    return joinTracks(book, { keepId: keep?.id ?? "", dropId: drop?.id ?? "" });
  },
  mergeInto: async ({ book }) => {
    const rows = await dump(book);
    const runs = rows.runs.map((run) => ({ ...run, note: "from the phone", updatedAt: run.updatedAt + 1 }));
    return mergeInto(book, { ...rows, runs }, "phone");
  },
  undoChange: ({ book, last }) => undoChange(book, last),
};

const everything = async ({ book }: Scene) => ({
  rows: await dump(book),
  digests: await book.digests.toArray(),
});

for (const [name, write] of Object.entries(writes))
  test(`${name} is stored whole or not at all, whichever storing call fails`, async () => {
    const scene = await aScene();
    const before = await everything(scene);
    let n = 0;
    for (let isDone = false; !isDone && n < 60; ) {
      n += 1;
      const fault = failingStore(n);
      const outcome = await write(scene).then(
        () => "stored",
        (error: unknown) => error,
      );
      fault.mend();
      isDone = !fault.fired();
      if (isDone) expect(outcome).toBe("stored");
      else {
        expect(outcome).toBeInstanceOf(LedgerFault);
        expect(outcome).toMatchObject({ code: "quota", message: expect.stringContaining("no space left") });
        expect(await everything(scene)).toEqual(before);
      }
    }
    expect(n).toBeGreaterThan(1);
    expect(await everything(scene)).not.toEqual(before);
  });
