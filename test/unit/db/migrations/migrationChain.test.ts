import "fake-indexeddb/auto";

import { readFile } from "node:fs/promises";
import { Dexie } from "dexie";
import { expect, test } from "vitest";
import {
  checkRows,
  dump,
  idMaker,
  lowestSchema,
  migrateRows,
  newestSchema,
  openLogbook,
  withAside,
} from "#db";
import { readBackup } from "#files";
import { derivedTables } from "../../../../src/db/derived.ts";
import { declareSchemas } from "../../../../src/db/migrations/declareSchemas.ts";
import type { Migration, OldRow } from "../../../../src/db/migrations/migration.ts";
import { migrations } from "../../../../src/db/migrations/migrations.ts";
import { v1 } from "../../../../src/db/migrations/v1.ts";
import { v2 } from "../../../../src/db/migrations/v2.ts";
import { nativeVersion } from "../../../../src/db/nativeVersion.ts";
import { diceFrom } from "../../../support/mutateBackup.ts";
import { failReadsOf } from "../../../support/unreadableRows.ts";

const tools = { clock: () => 1e12, newId: idMaker(() => 1e12) };

/** Rows of a fixture, as its version of the app wrote them. */
async function fixture(version: number): Promise<Readonly<Record<string, readonly OldRow[]>>> {
  const file = new URL(`../../../fixtures/logbooks/v${version}.json`, import.meta.url);
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
  return Object.fromEntries(entries.filter(([table]) => !derivedTables.includes(table)));
}

for (const { version } of migrations)
  test(`a logbook left by schema ${version} is opened with the rows that a restore of its backup gives`, async () => {
    const tables = await fixture(version);
    await databaseWith(`left-by-${version}`, migrations.slice(0, version), tables);
    const book = await openLogbook({ name: `left-by-${version}`, ...tools });
    const migrated = migrateRows(tables, version);
    const { rows, bad } = withAside(migrated, checkRows(migrated));
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

/** The steps to a third schema of which one throws at rows that are marked as bad, here and there in two tables. */
const picky: readonly Migration[] = [
  v1,
  v2,
  {
    version: 3,
    indexes: { cars: "id, name, updatedAt" },
    rows: {
      cars: (row) => {
        if (row["isBad"] === true) throw new Error("this car cannot be brought over");
        return { ...row, wheels: 4 };
      },
      runs: (row) => ({ ...row, note: (row["note"] as string).trim() }),
    },
  },
];

test("whatever rows a step fails at, they go aside as they were and all others are brought over, on opening and on restoring", async () => {
  const seed = 20_261_128;
  const dice = diceFrom(seed);
  const { runs = [], aside: _, ...others } = await fixture(2);
  for (let turn = 0; turn < 12; turn += 1) {
    const said = `seed ${seed}, turn ${turn}`;
    const bad = (n: number) => Array.from({ length: n }, () => dice(3) === 0);
    const cars = bad(turn === 0 ? 0 : dice(1200)).map((isBad, index) => ({
      id: `car ${index}`,
      name: "c",
      isBad,
    }));
    const tables = {
      ...others,
      cars,
      runs: runs.map((run) => (dice(2) === 0 ? { ...run, note: 42 } : run)),
    };
    await databaseWith(`picky-${turn}`, picky.slice(0, 2), tables);
    const { aside = [], ...opened } = await openedWith(`picky-${turn}`, picky);
    const byId = (a: OldRow, b: OldRow) => (String(a["id"]) < String(b["id"]) ? -1 : 1);
    expect([...(opened["cars"] ?? [])].sort(byId), said).toEqual(
      cars
        .filter(({ isBad }) => !isBad)
        .map((car) => ({ ...car, wheels: 4 }))
        .sort(byId),
    );
    const failed = [...cars.filter(({ isBad }) => isBad), ...tables.runs.filter((run) => run["note"] === 42)];
    const held = aside.filter(({ schema }) => schema === 2).map(({ row }) => row as OldRow);
    expect(held.sort(byId), said).toEqual([...failed].sort(byId));
    const restored = migrateRows(tables, 2, picky);
    expect([...(restored["aside"] ?? [])].sort(byId), said).toEqual([...aside].sort(byId));
    expect({ ...restored, cars: [...(restored["cars"] ?? [])].sort(byId), aside: [] }, said).toEqual({
      ...opened,
      cars: [...(opened["cars"] ?? [])].sort(byId),
      aside: [],
    });
  }
});

test("a row that cannot be read stays where it is, and the others are brought over", async () => {
  const tables = await fixture(2);
  const cars = [1, 2, 3].map((n) => ({ ...tables["cars"]?.[0], id: `car ${n}` }));
  await databaseWith("unread", picky.slice(0, 2), { ...tables, cars });
  const mend = failReadsOf([{ table: "cars", id: "car 2" }]);
  const database = new Dexie("unread");
  declareSchemas(database, picky);
  await database.open();
  mend();
  expect(await database.table("cars").toArray()).toMatchObject([{ wheels: 4 }, cars[1], { wheels: 4 }]);
  expect((await database.table("cars").toArray())[1]).not.toHaveProperty("wheels");
  database.close();
});

test("a step that fails as a whole leaves every row and the version as they were, and the old code opens them", async () => {
  const tables = await fixture(2);
  const twice = (tables["cars"] ?? []).flatMap((car) => [car, { ...car, id: crypto.randomUUID() }]);
  await databaseWith("fails", migrations, { ...tables, cars: twice });
  // No two cars may have the same name by it, and two have.
  const failing: Migration = {
    version: newestSchema + 1,
    indexes: { cars: "id, &name, updatedAt" },
    rows: {},
  };
  await expect(openedWith("fails", [...migrations, failing])).rejects.toThrow();
  const book = await openLogbook({ name: "fails", ...tools });
  expect(await dump(book)).toEqual(
    withAside(
      tables,
      checkRows({ ...tables, cars: twice.toSorted((a, b) => (`${a["id"]}` < `${b["id"]}` ? -1 : 1)) }),
    ).rows,
  );
  expect(await nativeVersion("fails")).toBe(newestSchema * 10);
  book.close();
});
