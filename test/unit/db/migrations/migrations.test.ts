import "fake-indexeddb/auto";

import { readdir, readFile } from "node:fs/promises";
import { Dexie } from "dexie";
import { expect, test } from "vitest";
import {
  checkRows,
  dump,
  idMaker,
  lowestSchema,
  migrateRows,
  newestSchema,
  restoreAsNew,
  withAside,
} from "#db";
import { tableNames } from "#domain";
import { browserSha256, readBackup } from "#files";
import { declareSchemas } from "../../../../src/db/migrations/declareSchemas.ts";
import type { Migration } from "../../../../src/db/migrations/migration.ts";
import { migrations } from "../../../../src/db/migrations/migrations.ts";

const fixtures = new URL("../../../fixtures/logbooks/", import.meta.url);
const schemas = { lowest: lowestSchema, newest: newestSchema, sha256: browserSha256() };
const tools = { clock: () => 1e12, newId: idMaker(() => 1e12) };

test("schemas are numbered without gaps, and the newest is the last", () => {
  expect(migrations.map(({ version }) => version)).toEqual(
    migrations.map((_, index) => index + lowestSchema),
  );
  expect(migrations.at(-1)?.version).toBe(newestSchema);
});

test("every schema ever released has a backup among the fixtures", async () => {
  const files = await readdir(fixtures);
  for (const { version } of migrations) expect(files).toContain(`v${version}.json`);
});

for (const { version } of migrations)
  test(`a backup of schema ${version} is restored with all its rows`, async () => {
    const read = await readBackup(await readFile(new URL(`v${version}.json`, fixtures), "utf8"), schemas);
    if (!read.ok) throw new Error(read.problem.wrong);
    expect(read.backup).toMatchObject({ schema: version, isVerified: true });
    const migrated = migrateRows(read.backup.tables, version);
    const { rows, bad } = withAside(migrated, checkRows(migrated));
    expect(bad).toEqual([]);
    const known = new Set(migrations.slice(0, version).flatMap(({ indexes }) => Object.keys(indexes)));
    for (const table of tableNames) expect(rows[table].length > 0, table).toBe(known.has(table));
    expect(rows.aside ?? []).toHaveLength(version === 1 ? 0 : 1);
    const book = await restoreAsNew(rows, { name: `fixture-${version}`, ...tools });
    expect(await dump(book)).toEqual(rows);
    book.close();
  });

/** Steps as later versions will bring them: one changes rows and drops some, one drops a table. */
const steps: readonly Migration[] = [
  { version: 1, indexes: { cars: "id", notes: "id" }, rows: {} },
  {
    version: 2,
    indexes: { cars: "id, name" },
    rows: {
      cars: (row) => (row["name"] === "" ? undefined : { ...row, name: `${row["name"]}!`, wheels: 4 }),
    },
  },
  { version: 3, indexes: { notes: null }, rows: {} },
];
const old = {
  cars: [
    { id: "a", name: "Club hatch", unknown: { kept: true } },
    { id: "b", name: "" },
  ],
  notes: [{ id: "n" }],
};

test("a migration does the same to an open logbook and to an old backup", async () => {
  const migrated = migrateRows(old, 1, steps);
  expect(migrated).toEqual({ cars: [{ id: "a", name: "Club hatch!", unknown: { kept: true }, wheels: 4 }] });
  expect(migrateRows(old, 3, steps)).toEqual(old);

  const before = new Dexie("migrated");
  declareSchemas(before, steps.slice(0, 1));
  await before.table("cars").bulkAdd(old.cars);
  await before.table("notes").bulkAdd(old.notes);
  before.close();
  const after = new Dexie("migrated");
  declareSchemas(after, steps);
  await after.open();
  expect(await after.table("cars").toArray()).toEqual(migrated["cars"]);
  expect(after.tables.map(({ name }) => name)).toEqual(["cars"]);
  after.close();
});
