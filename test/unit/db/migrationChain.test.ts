import "fake-indexeddb/auto";

import { readFile } from "node:fs/promises";
import { Dexie } from "dexie";
import { expect, test } from "vitest";
import { checkRows, dump, idMaker, lowestSchema, migrateRows, newestSchema, openLogbook } from "#db";
import { readBackup } from "#files";
import { declareSchemas } from "../../../src/db/migrations/declareSchemas.ts";
import type { Migration, OldRow } from "../../../src/db/migrations/migration.ts";
import { migrations } from "../../../src/db/migrations/migrations.ts";
import { v1 } from "../../../src/db/migrations/v1.ts";

const tools = { clock: () => 1e12, newId: idMaker(() => 1e12) };

/** Rows of a fixture, as its version of the app wrote them. */
async function fixture(version: number): Promise<Readonly<Record<string, readonly OldRow[]>>> {
  const file = new URL(`../../fixtures/logbooks/v${version}.json`, import.meta.url);
  const read = await readBackup(await readFile(file, "utf8"), {
    lowest: lowestSchema,
    newest: newestSchema,
    sha256: undefined,
  });
  if (!read.ok) throw new Error(read.problem.wrong);
  return read.backup.tables;
}

/** A database as the app was at the end of these steps, holding these rows. */
async function databaseWith(
  name: string,
  steps: readonly Migration[],
  tables: Readonly<Record<string, readonly OldRow[]>>,
): Promise<void> {
  const database = new Dexie(name);
  declareSchemas(database, steps);
  for (const [table, rows] of Object.entries(tables)) await database.table(table).bulkAdd([...rows]);
  database.close();
}

/** Opens a database with these steps and gives every table it then has, derived ones too. */
async function openedWith(name: string, steps: readonly Migration[]) {
  const database = new Dexie(name);
  declareSchemas(database, steps);
  await database.open();
  const entries = await Promise.all(
    database.tables.map(async (table) => [table.name, await table.toArray()] as const),
  );
  database.close();
  return Object.fromEntries(entries.filter(([table]) => table !== "digests"));
}

for (const { version } of migrations)
  test(`a logbook left by schema ${version} is opened with the rows that a restore of its backup gives`, async () => {
    const tables = await fixture(version);
    await databaseWith(`left-by-${version}`, migrations.slice(0, version), tables);
    const book = await openLogbook({ name: `left-by-${version}`, ...tools });
    const { rows, bad } = checkRows(migrateRows(tables, version));
    expect(bad).toEqual([]);
    expect(await dump(book)).toEqual(rows);
    book.close();
  });

/** Steps as later versions may bring them: rows changed, rows dropped, a table added and filled no further, one dropped. */
const later: readonly Migration[] = [
  v1,
  {
    version: 2,
    indexes: { cars: "id, name, updatedAt", tyreSets: "id" },
    rows: {
      cars: (row) => ({ ...row, wheels: 4 }),
      runs: (row) => ({
        ...row,
        laps: (row["laps"] as readonly OldRow[]).map((lap) => ({ ...lap, lights: "off" })),
      }),
    },
  },
  {
    version: 3,
    indexes: { forecasts: null, tyreSets: "id, updatedAt" },
    rows: {
      cars: (row) => ({ ...row, name: `${row["name"]} (${row["wheels"]} wheels)` }),
      references: () => undefined,
    },
  },
];

test("from the first schema to the third, step by step and in one go, on opening and on restoring, come the same rows", async () => {
  const tables = await fixture(1);
  await databaseWith("in-one-go", later.slice(0, 1), tables);
  await databaseWith("step-by-step", later.slice(0, 1), tables);
  const inOneGo = await openedWith("in-one-go", later);
  await openedWith("step-by-step", later.slice(0, 2));
  const stepByStep = await openedWith("step-by-step", later);
  expect(stepByStep).toEqual(inOneGo);

  const restored = migrateRows(tables, 1, later);
  const between = migrateRows(migrateRows(tables, 1, later.slice(0, 2)), 2, later);
  expect(between).toEqual(restored);
  expect({ tyreSets: [], ...restored }).toEqual(inOneGo);
  expect(inOneGo["cars"]?.[0]).toMatchObject({ name: expect.stringMatching(/ \(4 wheels\)$/), wheels: 4 });
  expect(inOneGo["references"]).toEqual([]);
  expect(inOneGo).not.toHaveProperty("forecasts");
  expect(JSON.stringify(tables)).not.toContain("wheels"); // the rows handed in are left as they were
});

test("a step that fails half way leaves every row and the version as they were, and the old code opens them", async () => {
  const tables = await fixture(1);
  await databaseWith("fails", later.slice(0, 1), tables);
  let seen = 0;
  const failing: Migration = {
    version: 2,
    indexes: { cars: "id, name, updatedAt" },
    rows: {
      cars: (row) => ({ ...row, wheels: 4 }),
      runs: (row) => {
        seen += 1;
        if (seen === 2) throw new Error("half way");
        return row;
      },
    },
  };
  await expect(openedWith("fails", [v1, failing])).rejects.toThrow("half way");
  const book = await openLogbook({ name: "fails", ...tools });
  expect(await dump(book)).toEqual(checkRows(tables).rows);
  book.close();
});
