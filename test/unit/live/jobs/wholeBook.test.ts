import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo, addReference, setTarget, turnPage } from "#db";
import { askHere } from "#live";
import { addSessions } from "../../../support/addSessions.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const today = "2026-03-10";
const laps = [84_300, 84_100, 84_200, 84_000, 84_400];

/** Two combos at one track, driven on these days each, and what is asked of the whole logbook. */
async function twoCombos(days: readonly string[]) {
  const { book } = await aLogbook();
  const combo = async (car: string, faster: number) => {
    const { comboId } = await addCombo(book, { car: { name: car }, track: { name: "Varnholt Ring" } });
    await addSessions(
      book,
      comboId,
      days.map((date) => ({ date, laps: laps.map((ms) => ms - faster) })),
    );
    return comboId;
  };
  const [hatch, kart] = [await combo("Club hatch", 0), await combo("Junior kart", 1000)];
  const across = async () => {
    const lines = await askHere(book, "acrossCombos", { today });
    return new Map(lines.map((line) => [line.comboId, line]));
  };
  const week = (monday: string, on = today) => askHere(book, "statement", { monday, today: on });
  return { book, hatch, kart, across, week };
}

test("each combo's line has its own target, reference lap and page, and none of another's", async () => {
  const { book, hatch, kart, across } = await twoCombos(["2026-03-03", "2026-03-08"]);
  const plain = await across();
  expect([...plain.keys()].sort()).toEqual([hatch, kart].sort());
  for (const id of [hatch, kart])
    expect(plain.get(id)).toMatchObject({
      sessions: 2,
      laps: 10,
      nextTarget: undefined,
      toReferencePercent: undefined,
    });
  expect(plain.get(hatch)?.best?.ms).toBe(84_000);
  expect(plain.get(kart)?.best?.ms).toBe(83_000);
  await setTarget(book, { comboId: hatch, kind: "best", value: 82_500, setOn: "2026-03-01" });
  await addReference(book, { comboId: kart, ms: 80_000, decimals: 3, source: "a friend" });
  await turnPage(book, { comboIds: [kart], from: Date.parse("2026-03-05T00:00:00Z"), reason: "new engine" });
  const lines = await across();
  expect(lines.get(hatch)?.nextTarget?.value).toBe(82_500);
  expect(lines.get(kart)?.nextTarget).toBeUndefined();
  expect(lines.get(hatch)?.toReferencePercent).toBeUndefined();
  // 83.000 against 80.000 is 3 s of 80 s.
  expect(lines.get(kart)?.toReferencePercent).toBeCloseTo(3.75, 10);
  expect([lines.get(hatch)?.sessions, lines.get(kart)?.sessions]).toEqual([2, 1]);
  book.close();
});

test("a session whose date is in doubt stands in no combo's line and in no week", async () => {
  const { book, hatch, across, week } = await twoCombos(["2026-03-03"]);
  await addSessions(book, hatch, [{ date: "2026-03-20", laps }]);
  expect((await across()).get(hatch)?.sessions).toBe(1);
  expect(await week("2026-03-16")).toMatchObject({ statement: { lines: [] }, after: undefined });
  book.close();
});

test("a week says on which days the sessions before and after it lie", async () => {
  const { book, week } = await twoCombos([
    "2026-02-10",
    "2026-02-22",
    "2026-02-23",
    "2026-03-01",
    "2026-03-02",
    "2026-03-09",
  ]);
  const at = async (monday: string) => {
    const { statement, before, after } = await week(monday);
    return { before, after, sessions: statement.total.sessions };
  };
  // From Monday 23 February to Sunday 1 March: two days, two combos.
  expect(await at("2026-02-23")).toEqual({ before: "2026-02-22", after: "2026-03-02", sessions: 4 });
  expect(await at("2026-02-09")).toEqual({ before: undefined, after: "2026-02-22", sessions: 2 });
  expect(await at("2026-03-09")).toEqual({ before: "2026-03-02", after: undefined, sessions: 2 });
  expect(await at("2026-03-16")).toEqual({ before: "2026-03-09", after: undefined, sessions: 0 });
  book.close();
});

test("the nearest session is found whichever combo it is of", async () => {
  const { book, hatch, kart, week } = await twoCombos(["2026-02-10"]);
  await addSessions(book, hatch, [
    { date: "2026-02-22", laps },
    { date: "2026-03-04", laps },
  ]);
  await addSessions(book, kart, [{ date: "2026-02-15", laps }]);
  expect(await week("2026-02-23")).toMatchObject({ before: "2026-02-22", after: "2026-03-04" });
  expect(await week("2026-02-16")).toMatchObject({ before: "2026-02-15", after: "2026-03-04" });
  book.close();
});

test("a session in which no lap was driven is not the nearest one of a week", async () => {
  const { book, hatch, week } = await twoCombos(["2026-02-10"]);
  await addSessions(book, hatch, [{ date: "2026-02-26", laps: [] }]);
  expect(await week("2026-03-02")).toMatchObject({ before: "2026-02-10", after: undefined });
  book.close();
});

test("the combos before and after a change of the rig are set side by side", async () => {
  const { book, hatch, kart } = await twoCombos(["2026-02-20", "2026-02-22", "2026-03-03", "2026-03-05"]);
  const records = [
    { id: "near", from: "2026-01-01" },
    { id: "far", from: "2026-03-01" },
  ];
  const steps = await askHere(book, "rigSteps", { rigId: "far", records, today });
  const sides = steps.map(({ comboId, before, after }) => [
    comboId,
    [before?.sessions.length, before?.usual.ms],
    [after?.sessions.length, after?.usual.ms],
  ]);
  expect(sides).toEqual([
    [hatch, [2, 84_200], [2, 84_200]],
    [kart, [2, 83_200], [2, 83_200]],
  ]);
  expect(await askHere(book, "rigSteps", { rigId: "none", records, today })).toEqual([]);
  book.close();
});
