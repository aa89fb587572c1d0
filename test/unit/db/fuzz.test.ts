import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  checkRows,
  deleteDatabase,
  dump,
  idMaker,
  lowestSchema,
  migrateRows,
  newestSchema,
  restoreAsNew,
} from "#db";
import { type TableName, tableNames } from "#domain";
import { readBackup, readText, writeBackup } from "#files";
import { checkRow } from "../../../src/db/checks/checkRow.ts";
import { aFullLogbook } from "../../support/aFullLogbook.ts";
import { diceFrom, mutateBackup } from "../../support/mutateBackup.ts";

const seed = 20_261_125;
const backups = 10_000;
const tools = { clock: () => 1e12, newId: idMaker(() => 1e12) };
const known = { lowest: lowestSchema, newest: newestSchema, sha256: undefined };
const before = Object.getOwnPropertyNames(Object.prototype).sort();

/** A changed text as a restore would read it: the rows that may be stored, or undefined when the file is refused. */
async function taken(text: string) {
  const read = await readText(new Blob([text]));
  if (!read.ok) return undefined;
  const parsed = await readBackup(read.text, known);
  if (!parsed.ok) {
    expect(parsed.problem.wrong).not.toBe("");
    return undefined;
  }
  return checkRows(migrateRows(parsed.backup.tables, parsed.backup.schema));
}

/** Why a row should never have been taken; undefined when it is as it should be. */
function whyWrong(table: TableName, row: object): string | undefined {
  if (Object.getPrototypeOf(row) !== Object.prototype) return "its prototype is another";
  if (JSON.stringify(row).includes('"__proto__":')) return "it has a field named __proto__";
  const checked = checkRow(table, row);
  return checked.ok ? undefined : checked.why;
}

test("10,000 mutated backups never crash, never give a wrong row, never reach Object.prototype", async () => {
  const { book } = await aFullLogbook();
  const text = await writeBackup(await dump(book), {
    title: "Mine",
    schema: newestSchema,
    sha256: undefined,
  });
  const dice = diceFrom(seed);
  const wrong: string[] = [];
  const seen = { refused: 0, whole: 0, partly: 0, stored: 0 };
  for (let n = 0; n < backups; n += 1) {
    const checked = await taken(mutateBackup(text, dice));
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    if (checked === undefined) {
      seen.refused += 1;
      continue;
    }
    seen[checked.bad.length === 0 ? "whole" : "partly"] += 1;
    for (const table of tableNames)
      for (const row of checked.rows[table]) {
        const why = whyWrong(table, row);
        if (why !== undefined) wrong.push(`mutation ${n}, ${table}: ${why}`);
      }
    if (n % 100 === 0) {
      const name = `fuzz-${n}`;
      const restored = await restoreAsNew(checked.rows, { name, ...tools });
      const stored = await dump(restored);
      for (const table of tableNames) expect(stored[table], table).toHaveLength(checked.rows[table].length);
      restored.close();
      await deleteDatabase(name);
      seen.stored += 1;
    }
  }
  expect(wrong).toEqual([]);
  expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(before);
  // The mutations are of every sort: a good many files are refused, taken in part, and still whole.
  for (const [what, least] of [
    ["refused", 1000],
    ["whole", 200],
    ["partly", 1000],
    ["stored", 30],
  ] as const)
    expect(seen[what], what).toBeGreaterThan(least);
});
