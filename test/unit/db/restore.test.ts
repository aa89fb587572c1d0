import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  checkRows,
  dump,
  idMaker,
  lowestSchema,
  mergeInto,
  migrateRows,
  newestSchema,
  restoreAsNew,
  sessionsOfCombo,
  sessionsOpen,
} from "#db";
import { type AllRows, canonicalText, noRows, tableNames } from "#domain";
import { browserSha256, readBackup, writeBackup } from "#files";
import { aFullLogbook } from "../../support/aFullLogbook.ts";
import { aLap } from "../../support/aLap.ts";
import { failingStore } from "../../support/failingStore.ts";

const sha256 = browserSha256();
const clock = () => Date.UTC(2026, 4, 1);
const tools = { clock, newId: idMaker(clock) };
const schemas = { lowest: lowestSchema, newest: newestSchema, sha256 };
const names = async () => (await indexedDB.databases()).map(({ name }) => name);

/** A text through reading, migrating and checking, as a restore does it. */
async function rowsFrom(text: string) {
  const read = await readBackup(text, schemas);
  if (!read.ok) throw new Error(read.problem.wrong);
  return checkRows(migrateRows(read.backup.tables, read.backup.schema));
}

test("a logbook saved and restored has the same rows byte for byte, and gives the same file again", async () => {
  const { book, comboId } = await aFullLogbook();
  const rows = await dump(book);
  for (const table of tableNames) expect(rows[table].length, table).toBeGreaterThan(0);
  const head = { title: "Mine", schema: newestSchema, sha256 };
  const text = await writeBackup(rows, head);
  const { rows: read, bad } = await rowsFrom(text);
  expect(bad).toEqual([]);
  const again = await restoreAsNew(read, { name: "restored", ...tools });
  expect(canonicalText(await dump(again))).toBe(canonicalText(rows));
  expect(await writeBackup(await dump(again), head)).toBe(text);
  expect(await sessionsOfCombo(again, comboId)).toHaveLength(1);
  expect(await sessionsOpen(again)).toEqual([]);
  const run = rows.runs[0]?.id ?? "";
  await addLap(again, { runId: run, id: tools.newId(), lap: aLap(83000) });
  const change = await mergeInto(again, read, "the same backup");
  expect(change.edits).toEqual([]);
});

function manyCars(count: number): AllRows {
  const cars = Array.from({ length: count }, (_, index) => ({
    id: tools.newId(),
    createdAt: 1,
    updatedAt: 1,
    name: `car ${index}`,
  }));
  return { ...noRows, cars };
}

test("a big restore tells how far it is", async () => {
  const seen: number[] = [];
  const book = await restoreAsNew(manyCars(5000), {
    name: "big",
    ...tools,
    onProgress: (done, all) => seen.push(done / all),
  });
  expect(seen).toEqual([0.4, 0.8, 1]);
  book.close();
});

test("a restore cancelled half way leaves nothing behind", async () => {
  const stop = new AbortController();
  const restoring = restoreAsNew(manyCars(5000), {
    name: "cancelled",
    ...tools,
    signal: stop.signal,
    onProgress: () => stop.abort(),
  });
  await expect(restoring).rejects.toMatchObject({ code: "cancelled" });
  expect(await names()).not.toContain("cancelled");
});

test("a restore that runs out of space leaves nothing behind and says so", async () => {
  for (const n of [1, 2500, 4999]) {
    const fault = failingStore(n);
    const restoring = restoreAsNew(manyCars(5000), { name: "full", ...tools });
    await expect(restoring).rejects.toMatchObject({
      message: expect.stringContaining("Backup not restored"),
    });
    fault.mend();
    expect(await names()).not.toContain("full");
  }
});

test("a restore never goes over a logbook that is there", async () => {
  const { book } = await aFullLogbook();
  const before = await dump(book);
  await expect(restoreAsNew(noRows, { name: book.name, ...tools })).rejects.toMatchObject({
    code: "invalid",
  });
  expect(await dump(book)).toEqual(before);
});
