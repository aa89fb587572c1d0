import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo, addReference, openLogbook, setPreferences, setTarget, turnPage } from "#db";
import { addDays } from "#domain";
import { askHere } from "#live";
import { addSessions } from "../../../support/addSessions.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const today = "2026-03-10";
const laps = [84_300, 84_100, 84_200, 84_000, 84_400];

/** A combo with a session of five laps every third day, the last one yesterday. */
async function evenings(count = 3) {
  const { book, clock } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const days = Array.from({ length: count }, (_, n) => addDays(today, 3 * (n - count) + 2));
  const ids = await addSessions(
    book,
    comboId,
    days.map((date) => ({ date, laps })),
  );
  const review = (on = today) => askHere(book, "comboReview", { comboId, period: {}, today: on });
  return { book, clock, comboId, ids, days, review };
}

test("a combo is reviewed by its sessions, its target, its reference lap and its pages", async () => {
  const { book, comboId, ids, days, review } = await evenings();
  const before = await review();
  expect(before.points.map(({ sessionId, date, median }) => [sessionId, date, median])).toEqual(
    ids.map((id, n) => [id, days[n], 84_200]),
  );
  expect(before.points.map(({ isPresentPage }) => isPresentPage)).toEqual([true, true, true]);
  expect(before.daysSinceLast).toBe(1);
  expect(before.targets).toEqual([]);
  // The first session has nothing before it to be measured against.
  expect(before.accounts.map(({ target }) => target)).toEqual([
    undefined,
    { ms: 84_000, from: "pb" },
    { ms: 84_000, from: "pb" },
  ]);
  await turnPage(book, {
    comboIds: [comboId],
    from: Date.parse(`${days[1]}T12:00:00Z`),
    reason: "new tyres",
  });
  const turned = await review();
  expect(turned.points.map(({ isPresentPage }) => isPresentPage)).toEqual([false, true, true]);
  expect(turned.curve).toMatchObject({
    known: true,
    value: { line: [{ sessionId: ids[1] }, { sessionId: ids[2] }] },
  });
  await setTarget(book, { comboId, kind: "best", value: 83_000, setOn: days[0] ?? "" });
  const aimed = await review();
  expect(aimed.targets.map(({ target }) => target.value)).toEqual([83_000]);
  book.close();
});

test("a reference lap that was known is what a combo's sessions are measured against", async () => {
  const { book, comboId, ids, review } = await evenings();
  await addReference(book, { comboId, ms: 83_500, decimals: 3, source: "a video" });
  // It was written down on the evening of the tenth: within half a day of the start of a session of that evening only.
  const [late = ""] = await addSessions(book, comboId, [{ date: today, laps }]);
  const { accounts } = await review();
  expect(accounts.map(({ sessionId, target }) => [sessionId, target?.from])).toEqual([
    [ids[0], undefined],
    [ids[1], "pb"],
    [ids[2], "pb"],
    [late, "reference"],
  ]);
  book.close();
});

test("what was driven on another combo is in no review of this one", async () => {
  const { book, ids, review } = await evenings();
  const other = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Tessemoor" } });
  await addSessions(book, other.comboId, [{ date: "2026-03-09", laps }]);
  await setTarget(book, { comboId: other.comboId, kind: "best", value: 83_000, setOn: "2026-03-01" });
  const { points, targets } = await review();
  expect([points.map(({ sessionId }) => sessionId), targets]).toEqual([ids, []]);
  book.close();
});

test("a session whose date is in doubt is in no review", async () => {
  const { book, comboId, ids, review } = await evenings();
  await addSessions(book, comboId, [{ date: "2026-03-20", laps }]);
  expect((await review()).points.map(({ sessionId }) => sessionId)).toEqual(ids);
  book.close();
});

test("laps count as the driver's preferences say", async () => {
  const { book, review } = await evenings();
  expect((await review()).points.map(({ paceLaps }) => paceLaps)).toEqual([5, 5, 5]);
  await setPreferences(book, { settlingLaps: 2 });
  expect((await review()).points.map(({ paceLaps }) => paceLaps)).toEqual([3, 3, 3]);
  book.close();
});

/** What is kept of the curve of the combo; each call changes it, and gives the curve of the next review. */
async function aKeptCurve(count?: number) {
  const { book, review, comboId } = await evenings(count);
  const { curve } = await review();
  const table = book.database.table<{
    readonly id: string;
    readonly version: string;
    readonly answer: unknown;
  }>("keptAnswers");
  const [kept] = await table.toArray();
  if (kept === undefined) throw new Error("nothing is kept");
  const whole = kept.answer as { readonly today: string; readonly curve: unknown };
  const whenKeptIs = async (answer: unknown, on = today) => {
    await table.put({ ...kept, answer });
    return (await review(on)).curve;
  };
  return { book, comboId, curve, kept, whole, whenKeptIs, review };
}

/** A curve that no laps give, as sound as one that was drawn. */
function mark<C>(curve: C): C {
  const known = curve as { readonly value?: object };
  return { ...curve, value: { ...known.value, sessionsLeftOut: 77 } };
}

test("a curve drawn today is drawn from what was kept, and drawn anew on another day", async () => {
  const { book, comboId, curve, kept, whole, whenKeptIs } = await aKeptCurve();
  expect(kept.id).toBe(`${comboId} curve`);
  expect(whole).toEqual({ today, curve });
  const marked = { ...whole, curve: mark(whole.curve) };
  expect(await whenKeptIs(marked)).toMatchObject({ known: true, value: { sessionsLeftOut: 77 } });
  const tomorrow = await whenKeptIs(marked, addDays(today, 1));
  expect(tomorrow).toMatchObject({ known: true, value: { sessionsLeftOut: 0 } });
  expect(await book.keptAnswers?.get(kept.id)).toMatchObject({ answer: { today: addDays(today, 1) } });
  book.close();
});

test("that there is too little to draw a curve from is kept as well", async () => {
  const { book, curve, whole, whenKeptIs } = await aKeptCurve(1);
  expect(curve.known).toBe(false);
  const reason = { because: "nothing to measure a period against" };
  expect(await whenKeptIs({ ...whole, curve: { known: false, reason } })).toEqual({ known: false, reason });
  for (const wrong of [undefined, null, "few"])
    expect(await whenKeptIs({ ...whole, curve: { known: false, reason: wrong } })).toEqual(curve);
  book.close();
});

test("a kept curve that the browser has damaged is drawn anew", async () => {
  const { book, curve, whole, whenKeptIs } = await aKeptCurve();
  if (!curve.known) throw new Error("no curve");
  const { value } = curve;
  const withValue = (changed: object) => ({
    ...whole,
    curve: { known: true, value: { ...value, ...changed } },
  });
  const [first, ...rest] = value.line;
  const wrongAnswers: readonly unknown[] = [
    undefined,
    null,
    "curve",
    42,
    {},
    { today },
    { ...whole, today: undefined },
    { ...whole, today: new Date(0) },
    { ...whole, curve: null },
    { ...whole, curve: "curve" },
    { ...whole, curve: { known: true } },
    { ...whole, curve: { known: true, value: null } },
    withValue({ line: undefined }),
    withValue({ line: "straight" }),
    withValue({ line: [{ ...first, median: Number.NaN }, ...rest] }),
    withValue({ line: [null, ...rest] }),
    withValue({ ahead: undefined }),
    withValue({ ahead: {} }),
    withValue({ now: null }),
    withValue({ now: undefined }),
    withValue({ now: Number.POSITIVE_INFINITY }),
    withValue({ levelsOff: null }),
    withValue({ levelsOff: undefined }),
    withValue({ levelsOff: Number.NaN }),
    withValue({ sessionsLeftOut: Number.NaN }),
  ];
  for (const answer of wrongAnswers) {
    const drawn = await whenKeptIs(answer);
    expect(drawn, JSON.stringify(answer)).toEqual(curve);
  }
  book.close();
});

test("a curve that other priors drew is drawn anew", async () => {
  const { book, curve, kept, whole, review } = await aKeptCurve();
  expect(kept.version).toMatch(/^\d+\/\S+\/\S+$/);
  const answer = { ...whole, curve: mark(whole.curve) };
  await book.database.table("keptAnswers").put({ ...kept, answer, version: `${kept.version}x` });
  expect((await review()).curve).toEqual(curve);
  book.close();
});

test("a logbook that is only read is reviewed without anything being kept in it", async () => {
  const { book, clock, comboId, ids } = await evenings();
  const tools = { clock: clock.now, newId: book.newId };
  const reading = await openLogbook({ name: book.name, ...tools, mode: "read" });
  const { points } = await askHere(reading, "comboReview", { comboId, period: {}, today });
  expect(points.map(({ sessionId }) => sessionId)).toEqual(ids);
  expect(await book.keptAnswers?.count()).toBe(0);
  expect((await book.digests.toArray()).map(({ digest }) => digest)).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
  reading.close();
  book.close();
});
