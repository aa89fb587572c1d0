import "fake-indexeddb/auto";

import { Dexie } from "dexie";
import { afterEach, expect, test, vi } from "vitest";
import { asideRow } from "#domain";
import { declareSchemas } from "../../../../src/db/migrations/declareSchemas.ts";
import type { Migration, OldRow } from "../../../../src/db/migrations/migration.ts";
import { failReadsOf } from "../../../support/unreadableRows.ts";

let mend: (() => void) | undefined;
afterEach(() => {
  mend?.();
  mend = undefined;
  vi.restoreAllMocks();
});

const first: Migration = { version: 1, indexes: { cars: "id", tracks: "id", aside: "id" }, rows: {} };
const step = (cars: (row: OldRow) => OldRow | undefined): Migration => ({
  version: 2,
  indexes: {},
  rows: { cars, tracks: (row) => ({ ...row, seen: true }) },
});
const shout = step((row) => {
  if (row["name"] === "bad") throw new Error("too quiet");
  return row["name"] === "" ? undefined : { ...row, name: `${row["name"]}!` };
});
const car = (n: number, name: unknown = `car ${n}`) => ({ id: String(n).padStart(4, "0"), name });

let made = 0;
/** A database of the first schema with these rows, then opened with another step; gives what it then holds. */
async function migrated(cars: readonly OldRow[], second: Migration, spoil: () => void = () => undefined) {
  made += 1;
  const name = `migrated-${made}`;
  const before = new Dexie(name);
  declareSchemas(before, [first]);
  await before.table("cars").bulkAdd([...cars]);
  await before.table("tracks").add({ id: "t" });
  before.close();
  spoil();
  const after = new Dexie(name);
  declareSchemas(after, [first, second]);
  await after.open();
  mend?.();
  mend = undefined;
  const [rows, tracks, aside] = await Promise.all(
    ["cars", "tracks", "aside"].map((table) => after.table(table).toArray()),
  );
  after.close();
  return { rows, tracks, aside };
}
const aside = (row: OldRow, why: string) => asideRow("cars", row, `not brought to schema 2: ${why}`, 1);

test("rows are brought over, dropped or set aside, each as its step says, table by table", async () => {
  expect(await migrated([car(1), car(2, ""), car(3, "bad"), car(4)], shout)).toEqual({
    rows: [car(1, "car 1!"), car(4, "car 4!")],
    tracks: [{ id: "t", seen: true }],
    aside: [aside(car(3, "bad"), "too quiet")],
  });
});

test("a row set aside by its step is gone from its table", async () => {
  const { rows, aside: held } = await migrated([car(1, "bad")], shout);
  expect(rows).toEqual([]);
  expect(held).toHaveLength(1);
});

test("more rows than are brought over at a time are all brought over, once", async () => {
  const cars = Array.from({ length: 1001 }, (_, n) => car(n));
  const { rows } = await migrated(cars, shout);
  expect(rows).toEqual(cars.map(({ id, name }) => ({ id, name: `${name}!` })));
});

test("a new row that the database does not take goes aside as it was, and the others are stored", async () => {
  // A function cannot be stored.
  const odd = step((row) => {
    if (row["name"] === "") return undefined;
    if (row["name"] === "bad") throw new Error("too quiet");
    return row["name"] === "odd" ? { ...row, horn: () => "honk" } : { ...row, name: `${row["name"]}!` };
  });
  const { rows, aside: held } = await migrated(
    [car(1), car(2, "odd"), car(3, ""), car(4), car(5, "bad")],
    odd,
  );
  expect(rows).toEqual([car(1, "car 1!"), car(4, "car 4!")]);
  expect(held).toHaveLength(2);
  expect(held).toContainEqual(aside(car(5, "bad"), "too quiet"));
  const [refused] = (held ?? []).filter(({ row }) => row?.["name"] === "odd");
  expect(refused).toMatchObject({ table: "cars", schema: 1, row: car(2, "odd") });
  expect(refused?.why).toMatch(/^not brought to schema 2: ./);
});

test("a row that cannot be read stays as it is, and the others are brought over", async () => {
  const spoil = () => {
    mend = failReadsOf([{ table: "cars", id: car(2).id }]);
  };
  const { rows, aside: held } = await migrated([car(1), car(2), car(3)], shout, spoil);
  expect(rows).toEqual([car(1, "car 1!"), car(2), car(3, "car 3!")]);
  expect(held).toEqual([]);
});

test("a read that fails for another reason ends the opening, and nothing is brought over", async () => {
  const fail = () => {
    throw new DOMException("on purpose", "TransactionInactiveError");
  };
  const opening = migrated([car(1)], shout, () => {
    vi.spyOn(IDBObjectStore.prototype, "get").mockImplementation(fail);
  });
  await expect(opening).rejects.toThrow("on purpose");
  vi.restoreAllMocks();
  const old = new Dexie(`migrated-${made}`);
  declareSchemas(old, [first]);
  expect(await old.table("cars").toArray()).toEqual([car(1)]);
  old.close();
});

test("a step without rows to change opens the tables it adds, and touches no row", async () => {
  const { rows, tracks } = await migrated([car(1)], { version: 2, indexes: { notes: "id" }, rows: {} });
  expect(rows).toEqual([car(1)]);
  expect(tracks).toEqual([{ id: "t" }]);
});
