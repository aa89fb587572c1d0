import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo, dump, editLap, turnPage } from "#db";
import { addDays } from "#domain";
import { askHere } from "#live";
import { addSessions, type PastSession } from "../../../support/addSessions.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const today = "2026-03-10";
const by = addDays(today, 28);

/** Eight sessions to the day before today, ten laps about a usual one. */
const about = (usual: number, first: string): PastSession[] =>
  Array.from({ length: 8 }, (_, session) => ({
    date: addDays(first, 3 * session),
    laps: Array.from({ length: 10 }, (_, lap) => usual + 40 * ((3 * session + 7 * lap) % 10)),
  }));

/** A combo of quick sessions, and what is said of its targets; draws hang on the combo's id, so all is asked of one. */
async function quickCombo() {
  const { book } = await aLogbook(Date.parse(`${today}T18:00:00Z`));
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  await addSessions(book, comboId, about(84_000, "2026-02-14"));
  return {
    addSlowBefore: () => addSessions(book, comboId, about(88_000, "2025-12-01")),
    /** All laps of 2025 five seconds quicker than they were written down. */
    mendThose: async () => {
      const { sessions, runs } = await dump(book);
      const old = new Set(sessions.filter(({ date }) => date < "2026").map(({ id }) => id));
      for (const run of runs.filter(({ sessionId }) => old.has(sessionId)))
        for (const { id, ms = 0 } of run.laps)
          await editLap(book, { runId: run.id, lapId: id, patch: { ms: ms - 5000 } });
    },
    turnPageOn: (day: string) =>
      turnPage(book, { comboIds: [comboId], from: Date.parse(`${day}T00:00:00Z`), reason: "new tyres" }),
    ask: async () => ({
      outlook: await askHere(book, "targetOutlook", { comboId, kind: "best", value: 83_700, by, today }),
      suggested: await askHere(book, "suggestedTargets", { comboId, kind: "best", by, today }),
    }),
  };
}

test("laps of before a new page are in no chance and in no suggested target, without one they are", async () => {
  const { ask, addSlowBefore, mendThose, turnPageOn } = await quickCombo();
  const alone = await ask();
  expect(alone).toMatchObject({ outlook: { known: true }, suggested: { known: true } });
  await addSlowBefore();
  const together = await ask();
  expect(together.outlook).not.toEqual(alone.outlook);
  expect(together.suggested).not.toEqual(alone.suggested);
  await turnPageOn("2026-02-01");
  // That something was driven is known of old pages, too: it makes a break. How fast it was is not.
  const apart = await ask();
  expect(apart.outlook).not.toEqual(together.outlook);
  await mendThose();
  expect(await ask()).toEqual(apart);
});

test("a page that a wrong clock turned in years to come takes nothing out of the chance", async () => {
  const { ask, turnPageOn } = await quickCombo();
  const before = await ask();
  await turnPageOn("2031-01-01");
  expect(await ask()).toEqual(before);
});
