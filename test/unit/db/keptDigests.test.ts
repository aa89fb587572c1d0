import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  type DigestMaker,
  digestsOfAll,
  digestsOfCombo,
  fastestSession,
  freshenDigests,
  readDigests,
} from "#db";
import type { Id, Run } from "#domain";
import { aLogbook } from "../../support/aLogbook.ts";
import { failReadsOf } from "../../support/unreadableRows.ts";
import { idAt, wholeLap, wholeRows } from "../../support/wholeRows.ts";

const combo = idAt(5);
const { deletedAt: _, ...session } = wholeRows.sessions;
const { deletedAt: __, ...run } = wholeRows.runs;
const sessionAt = (n: number, fields: object = {}) => ({ ...session, id: idAt(n), startedAt: n, ...fields });
const runAt = (n: number, ms?: number) => ({
  ...run,
  id: idAt(n + 100),
  sessionId: idAt(n),
  laps:
    ms === undefined
      ? []
      : [{ ...wholeLap, id: idAt(n + 200), ms, sectors: undefined, sectorDecimals: undefined }],
});
const markAt = (n: number, fields: object = {}) => ({
  sessionId: idAt(n),
  comboId: combo,
  startedAt: n,
  changedAt: n + 1000,
  staleSince: n + 1000,
  ...fields,
});

/** Sessions by their start, each with a run of one lap of the time given, or of none, their figures to be made. */
async function withSessions(times: Readonly<Record<number, number | undefined>>) {
  const { book } = await aLogbook();
  const all = Object.entries(times).map(([n, ms]) => [Number(n), ms] as const);
  await book.database.table("sessions").bulkAdd(all.map(([n]) => sessionAt(n)));
  await book.database.table("runs").bulkAdd(all.map(([n, ms]) => runAt(n, ms)));
  await book.database.table("digests").bulkAdd(all.map(([n]) => markAt(n)));
  const made: number[] = [];
  const maker: DigestMaker<readonly number[]> = {
    methodVersion: "1",
    make: ({ startedAt }, runs: readonly Run[]) => {
      made.push(startedAt);
      return runs.flatMap(({ laps }) => laps.flatMap(({ ms }) => ms ?? []));
    },
    isWhole: (digest): digest is readonly number[] => Array.isArray(digest),
    bestKeyOf: (digest) => digest[0],
  };
  return { book, maker, made };
}
const starts = (digests: readonly { readonly startedAt: number }[]) =>
  digests.map(({ startedAt }) => startedAt);
const always = { from: 0, to: 1000 };

test("figures of a combo come oldest first, of sessions that began in a span: its beginning counts, its end does not", async () => {
  const { book, maker } = await withSessions({ 30: 83_000, 10: 84_000, 20: 85_000 });
  expect(await readDigests(book, combo, maker)).toEqual(
    [10, 20, 30].map((n, index) => ({
      sessionId: idAt(n),
      startedAt: n,
      changedAt: n + 1000,
      digest: [[84_000], [85_000], [83_000]][index],
      isNew: true,
    })),
  );
  expect(starts(await readDigests(book, combo, maker, { from: 10, to: 30 }))).toEqual([10, 20]);
  expect(starts(await readDigests(book, combo, maker, { from: 11, to: 31 }))).toEqual([20, 30]);
  expect(await readDigests(book, idAt(50), maker)).toEqual([]);
  book.close();
});

test("figures once made are kept with their mark, method and best, and are no longer waited for", async () => {
  const { book, maker, made } = await withSessions({ 10: 84_000, 20: undefined });
  await digestsOfCombo(book, combo, maker);
  expect(await book.digests.toArray()).toEqual([
    {
      sessionId: idAt(10),
      comboId: combo,
      startedAt: 10,
      changedAt: 1010,
      madeFrom: 1010,
      methodVersion: "1",
      digest: [84_000],
      bestKey: 84_000,
    },
    {
      sessionId: idAt(20),
      comboId: combo,
      startedAt: 20,
      changedAt: 1020,
      madeFrom: 1020,
      methodVersion: "1",
      digest: [],
    },
  ]);
  expect((await digestsOfCombo(book, combo, maker)).map(({ isNew }) => isNew)).toEqual([false, false]);
  expect(made).toEqual([10, 20]);
  book.close();
});

test("figures made before their session changed are made again, whatever method and shape they are of", async () => {
  const { book, maker, made } = await withSessions({ 10: 84_000 });
  const old = { madeFrom: 5, methodVersion: "1", digest: [80_000] };
  await book.database.table("digests").put(markAt(10, old));
  expect(await digestsOfCombo(book, combo, maker)).toMatchObject([{ digest: [84_000], isNew: true }]);
  expect(made).toEqual([10]);
  book.close();
});

test("a best that is no more is forgotten with the figures it was of", async () => {
  const { book, maker } = await withSessions({ 10: undefined });
  await book.database.table("digests").put(markAt(10, { bestKey: 80_000 }));
  await digestsOfCombo(book, combo, maker);
  expect((await book.digests.toArray())[0]).not.toHaveProperty("bestKey");
  book.close();
});

test("a session that is not there has no figures, and nothing is kept for it", async () => {
  const { book, maker } = await withSessions({ 10: 84_000 });
  await book.database.table("digests").add(markAt(20));
  expect(starts(await digestsOfCombo(book, combo, maker))).toEqual([10]);
  expect(starts(await digestsOfAll(book, maker))).toEqual([10]);
  expect(await freshenDigests(book, maker)).toBe(0);
  expect(await book.digests.get(idAt(20))).toEqual(markAt(20));
  book.close();
});

test("figures of all combos come in one list, oldest first, each with its combo, and are kept", async () => {
  const { book, maker, made } = await withSessions({ 30: 83_000, 10: 84_000 });
  // Made last, it stands last among the ids.
  const between = { comboId: idAt(50), startedAt: 20 };
  await book.database.table("sessions").add(sessionAt(90, between));
  await book.database.table("digests").add(markAt(90, between));
  const all = await digestsOfAll(book, maker);
  expect(all.map(({ startedAt, comboId }) => [startedAt, comboId])).toEqual([
    [10, combo],
    [20, idAt(50)],
    [30, combo],
  ]);
  await digestsOfAll(book, maker);
  expect(made).toHaveLength(3);
  const { database: ___, ...reading } = book;
  expect(await digestsOfAll(reading, maker)).toHaveLength(3);
  book.close();
});

test("a logbook that is only read, or that another tab has upgraded, keeps no figures", async () => {
  const { book, maker } = await withSessions({ 10: 84_000 });
  const before = await book.digests.toArray();
  const { database: ___, ...reading } = book;
  await digestsOfCombo(reading, combo, maker);
  await digestsOfAll(reading, maker);
  const status = { ...book.status, get: () => ({ kind: "newerTab" }) as const };
  await digestsOfCombo({ ...book, status }, combo, maker);
  expect(await book.digests.toArray()).toEqual(before);
  book.close();
});

test("figures made without a run that cannot be read are given and not kept", async () => {
  const { book, maker } = await withSessions({ 10: 84_000 });
  const mend = failReadsOf([{ table: "runs", id: idAt(110) }]);
  expect(await digestsOfCombo(book, combo, maker)).toMatchObject([{ digest: [], isNew: false }]);
  expect(await freshenDigests(book, maker)).toBe(0);
  mend();
  // What could not be read once is not trusted again before the logbook is opened anew.
  expect(await digestsOfCombo(book, combo, maker)).toMatchObject([{ digest: [84_000], isNew: false }]);
  book.close();
});

test("figures whose session changed while they were made are not kept", async () => {
  const { book, maker } = await withSessions({ 10: 84_000, 20: 85_000 });
  let changed: PromiseLike<unknown> = Promise.resolve();
  await digestsOfCombo(book, combo, {
    ...maker,
    make: (one, runs) => {
      if (one.startedAt === 20) changed = book.database.table("digests").put(markAt(20, { changedAt: 6000 }));
      return maker.make(one, runs);
    },
  });
  await changed;
  expect((await book.digests.toArray()).map(({ madeFrom }) => madeFrom)).toEqual([1010, undefined]);
  book.close();
});

test("figures that cannot be kept are missed in words", async () => {
  const { book, maker } = await withSessions({ 10: 84_000 });
  const closing: typeof maker = {
    ...maker,
    make: (one, runs) => {
      book.database.close({ disableAutoOpen: true });
      return maker.make(one, runs);
    },
  };
  await expect(digestsOfCombo(book, combo, closing)).rejects.toMatchObject({
    code: "closed",
    message: expect.stringMatching(/^Figures not kept: /),
  });
});

/** The start of the fastest session of a span. */
const fastest = async (
  { book, maker }: Awaited<ReturnType<typeof withSessions>>,
  span = always,
  except?: Id,
) =>
  (await fastestSession(book, { comboId: combo, span, ...(except !== undefined && { except }) }, maker))
    ?.startedAt;

test("the fastest session is found among kept figures and those yet to be made, in its span", async () => {
  const all = await withSessions({ 10: 83_000, 20: 82_000, 30: 84_000 });
  expect(await fastest(all)).toBe(20);
  await digestsOfCombo(all.book, combo, all.maker, { from: 20, to: 31 });
  all.made.length = 0;
  expect(await fastest(all)).toBe(20);
  expect(all.made).toEqual([10]);
  expect(await fastest(all, { from: 0, to: 20 })).toBe(10);
  expect(await fastest(all, { from: 21, to: 1000 })).toBe(30);
  expect(await fastest(all, { from: 20, to: 21 })).toBe(20);
  expect(await fastest(all, { from: 40, to: 1000 })).toBeUndefined();
  expect(await fastest(all, always, idAt(20))).toBe(10);
  all.book.close();
});

test("a session that is open is looked at where it stands, unless it is the one being driven", async () => {
  const all = await withSessions({ 10: 83_000, 20: 82_000 });
  const { staleSince: ___, ...open } = markAt(20, { openSince: 20 });
  await all.book.database.table("digests").put(open);
  expect(await fastest(all)).toBe(20);
  expect(await fastest(all, always, idAt(20))).toBe(10);
  expect(await fastest(all, { from: 0, to: 20 })).toBe(10);
  all.book.close();
});

test("an open session of another combo is not asked about", async () => {
  const all = await withSessions({ 10: 83_000, 20: 82_000 });
  const { staleSince: ___, ...open } = markAt(20, { openSince: 20, comboId: idAt(50) });
  await all.book.database.table("digests").put(open);
  expect(await fastest(all)).toBe(10);
  all.book.close();
});

test("of sessions of one best the figures kept are taken first, and sessions without a best never", async () => {
  const all = await withSessions({ 10: 83_000, 20: 83_000, 30: undefined });
  await digestsOfCombo(all.book, combo, all.maker, { from: 20, to: 31 });
  expect(await fastest(all)).toBe(20);
  const none = await withSessions({ 10: undefined });
  expect(await fastest(none)).toBeUndefined();
  all.book.close();
  none.book.close();
});

test("sessions that wait for their figures are made two hundred at a time", async () => {
  const times = Object.fromEntries(Array.from({ length: 201 }, (_, n) => [n + 1, 83_000]));
  const { book, maker } = await withSessions(times);
  expect(await freshenDigests(book, maker)).toBe(200);
  expect(await freshenDigests(book, maker)).toBe(1);
  expect(await freshenDigests(book, maker)).toBe(0);
  book.close();
});
