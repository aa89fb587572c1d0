import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  changeSessionDate,
  deleteLap,
  editRun,
  editSession,
  endSession,
  preferences,
  runsOfSession,
  setPreferences,
  startSession,
} from "#db";
import { sessionDigest } from "#stats";
import { freshDigests } from "../../../../src/live/jobs/freshDigests.ts";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const today = "2026-03-12";

/** A session that is over, whose figures are kept. */
async function anEvening() {
  const { book, clock } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const { sessionId, runId } = await startSession(book, { comboId, date: "2026-03-10", zone: "UTC" });
  const lapId = book.newId();
  await addLap(book, { runId, id: lapId, lap: aLap(84_321) });
  for (const ms of [83_456, 83_512, 83_600, 83_402])
    await addLap(book, { runId, id: book.newId(), lap: aLap(ms) });
  await endSession(book, { sessionId });
  const kept = async () => (await freshDigests(book, comboId, await preferences(book), today))[0];
  await kept();
  return { book, clock, sessionId, runId, lapId, kept };
}

type Evening = Awaited<ReturnType<typeof anEvening>>;

/** What changes a figure of the session, and the figure it changes. */
const changes: Readonly<Record<string, (evening: Evening) => Promise<unknown>>> = {
  "its target": ({ book, sessionId }) => editSession(book, { sessionId, patch: { targetMs: 83_000 } }),
  "its focus": ({ book, sessionId }) => editSession(book, { sessionId, patch: { focus: "braking" } }),
  "its date": ({ book, sessionId }) =>
    changeSessionDate(book, {
      sessionId,
      date: "2026-03-09",
      startedAt: Date.UTC(2026, 2, 9, 18),
      isTimeOfDayKnown: true,
    }),
  "the kind of a run": ({ book, runId }) => editRun(book, { runId, patch: { kind: "drill" } }),
  "the surface of a run": ({ book, runId }) => editRun(book, { runId, patch: { surface: "wet" } }),
  "who drove a run": ({ book, runId }) => editRun(book, { runId, patch: { guest: "a friend" } }),
  "a lap that is deleted": ({ book, runId, lapId }) => deleteLap(book, { runId, lapId }),
  "a lap that is added": ({ book, runId }) => addLap(book, { runId, id: book.newId(), lap: aLap(83_000) }),
  "the settling laps of the preferences": ({ book }) => setPreferences(book, { settlingLaps: 2 }),
  "the decimals of the preferences": ({ book }) => setPreferences(book, { displayDecimals: 1 }),
};

for (const [what, change] of Object.entries(changes))
  test(`figures of a session that were kept are made anew where this changes: ${what}`, async () => {
    const evening = await anEvening();
    const { book, sessionId, kept } = evening;
    const before = await kept();
    await change(evening);
    const session = await book.tables.sessions.get(sessionId);
    if (session === undefined) throw new Error("no session");
    const anew = sessionDigest(session, await runsOfSession(book, sessionId), await preferences(book));
    expect(anew).not.toEqual(before);
    expect(await kept()).toEqual(anew);
    book.close();
  });
