import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { dump, mergeInto, rowsIn } from "#db";
import { type AllRows, noRows } from "#domain";
import { editsBetween } from "../../../src/db/putDifference.ts";
import { aLogbook } from "../../support/aLogbook.ts";
import { idAt, wholeRows } from "../../support/wholeRows.ts";

const { deletedAt: _, ...session } = wholeRows.sessions;
const { deletedAt: __, ...run } = wholeRows.runs;
const rows = (some: Partial<AllRows>): AllRows => ({ ...noRows, ...some });
const car = (n: number, name = `car ${n}`) => ({ ...wholeRows.cars, id: idAt(n), name });

test("rows that differ are named with what they were and what they are; those that do not, are not", () => {
  const before = rows({ cars: [car(1), car(2), car(3)], tracks: [wholeRows.tracks] });
  const after = rows({ cars: [car(1), car(2, "new"), car(4)] });
  expect(editsBetween(before, after)).toEqual([
    { table: "cars", id: idAt(2), before: car(2), after: car(2, "new") },
    { table: "cars", id: idAt(4), after: car(4) },
    { table: "cars", id: idAt(3), before: car(3) },
    { table: "tracks", id: wholeRows.tracks.id, before: wholeRows.tracks },
  ]);
  expect(editsBetween(before, before)).toEqual([]);
});

test("a big merge tells how far it is, five hundred rows at a time, table by table", async () => {
  const { book } = await aLogbook();
  const many = rows({
    cars: Array.from({ length: 1001 }, (_, n) => car(1000 + n)),
    tracks: [wholeRows.tracks],
  });
  const seen: string[] = [];
  await mergeInto(book, many, "a copy", { onProgress: (done, all) => seen.push(`${done} of ${all}`) });
  expect(seen).toEqual(["500 of 1002", "1000 of 1002", "1001 of 1002", "1002 of 1002"]);
  expect(rowsIn(await dump(book))).toBe(1002);
  book.close();
});

test("a merge that is stopped before it began stores nothing and says so", async () => {
  const { book } = await aLogbook();
  const stop = new AbortController();
  stop.abort();
  const merging = mergeInto(book, rows({ cars: [car(1)] }), "a copy", { signal: stop.signal });
  await expect(merging).rejects.toMatchObject({
    code: "cancelled",
    message: "Stopped; nothing was changed.",
  });
  expect(rowsIn(await dump(book))).toBe(0);
  book.close();
});

const digest = { sessionId: session.id, comboId: session.comboId, startedAt: session.startedAt };

test("a session that comes has its figures made; a run that comes has those of its session made anew", async () => {
  const { book, clock } = await aLogbook();
  await mergeInto(book, rows({ sessions: [session] }), "a copy");
  const at = clock.now();
  expect(await book.digests.toArray()).toMatchObject([{ ...digest, changedAt: at, staleSince: at }]);
  clock.pass(1000);
  await mergeInto(book, rows({ runs: [run] }), "a copy");
  expect(await book.digests.toArray()).toMatchObject([{ ...digest, changedAt: at + 1000 }]);
  book.close();
});

test("a mark never comes again where the clock stands still or goes back", async () => {
  const { book, clock } = await aLogbook();
  const at = clock.now();
  await mergeInto(book, rows({ sessions: [session] }), "a copy");
  await mergeInto(book, rows({ runs: [run] }), "a copy");
  expect(await book.digests.toArray()).toMatchObject([{ changedAt: at + 1 }]);
  clock.pass(-5000);
  await mergeInto(book, rows({ runs: [{ ...run, updatedAt: run.updatedAt + 1, note: "x" }] }), "a copy");
  expect(await book.digests.toArray()).toMatchObject([{ changedAt: at + 2 }]);
  book.close();
});

test("a mark is greater than that of any session of the combo, whichever of them changed last", async () => {
  const { book, clock } = await aLogbook();
  const at = clock.now();
  const other = { ...session, id: idAt(70) };
  await mergeInto(book, rows({ sessions: [session, other] }), "a copy");
  clock.pass(9000);
  await mergeInto(book, rows({ runs: [run] }), "a copy");
  clock.pass(-9000);
  await mergeInto(book, rows({ runs: [{ ...run, id: idAt(71), sessionId: other.id, laps: [] }] }), "a copy");
  expect((await book.digests.toArray()).map(({ changedAt }) => changedAt)).toEqual([at + 9000, at + 9001]);
  book.close();
});

test("a session that a merge deletes has no figures any more", async () => {
  const { book } = await aLogbook();
  await mergeInto(book, rows({ sessions: [session] }), "a copy");
  const gone = { ...session, updatedAt: session.updatedAt + 1, deletedAt: session.updatedAt + 1 };
  await mergeInto(book, rows({ sessions: [gone] }), "a copy");
  expect(await book.digests.toArray()).toEqual([]);
  book.close();
});

test("a run that moves by a merge has the figures of both its sessions made anew", async () => {
  const { book, clock } = await aLogbook();
  const other = { ...session, id: idAt(70) };
  await mergeInto(book, rows({ sessions: [session, other], runs: [run] }), "a copy");
  clock.pass(1000);
  const moved = { ...run, sessionId: other.id, updatedAt: run.updatedAt + 1 };
  await mergeInto(book, rows({ runs: [moved] }), "a copy");
  expect((await book.digests.toArray()).map(({ changedAt }) => changedAt)).toEqual([
    clock.now(),
    clock.now(),
  ]);
  book.close();
});

test("what is of no session touches no figures", async () => {
  const { book, clock } = await aLogbook();
  await mergeInto(book, rows({ sessions: [session] }), "a copy");
  const before = await book.digests.toArray();
  clock.pass(1000);
  await mergeInto(book, rows({ cars: [car(1)], targets: [wholeRows.targets] }), "a copy");
  expect(await book.digests.toArray()).toEqual(before);
  book.close();
});
