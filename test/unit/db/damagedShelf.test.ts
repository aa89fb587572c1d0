import "fake-indexeddb/auto";

import fc from "fast-check";
import { beforeEach, expect, test } from "vitest";
import {
  backupFolder,
  createLogbook,
  daysOpened,
  deleteUnlisted,
  draftsFrom,
  forgetOldCopies,
  idMaker,
  keepCopy,
  keptCopies,
  listLogbooks,
  noteBackup,
  noteLaps,
  noteOpened,
  notePurged,
  noteSent,
  noteUnlisted,
  openShelf,
  type Shelf,
  type ShelvedLogbook,
  writeDraft,
} from "#db";
import { practiceDay, sayDate } from "#domain";
import { fixedClock } from "../../support/fixedClock.ts";

const today = "2026-03-10";
const clock = fixedClock(Date.UTC(2026, 2, 10));
let shelf: Shelf;
let opened = 0;
let logbook: ShelvedLogbook;
beforeEach(async () => {
  opened += 1;
  shelf = await openShelf({ clock: clock.now, newId: idMaker(clock.now), name: `shelf-${opened}` });
  logbook = await createLogbook(shelf, { title: "Mine" });
  const { name } = logbook;
  await noteOpened(shelf, name, today);
  await writeDraft(shelf, { key: `${name}/entry 1|tab`, text: "4912", tab: "tab", at: clock.now() });
  const packed = new Uint8Array([1, 2, 3]);
  await keepCopy(shelf, { logbook: name, title: "Mine", why: "replace", sessions: 1, laps: 2, packed });
  await noteSent(shelf, name, new Map([["row", 1]]));
  await notePurged(shelf, name, today, new Map([["row", { deletedAt: 1, day: 1 }]]));
  await noteUnlisted(shelf, "lap-ledger-lost");
  await shelf.database.table("folders").put({ logbook: name, handle: {}, tag: "ab12", seen: {} });
});

const keys = {
  logbooks: "name",
  drafts: "key",
  kept: "id",
  folders: "logbook",
  unlisted: "name",
  sent: "logbook",
  deleted: "logbook",
} as const;
type Table = keyof typeof keys;
const odd = fc.constantFrom<unknown>(
  42,
  -1,
  0.5,
  Number.NaN,
  1e300,
  8.64e15,
  null,
  "",
  "x",
  {},
  [],
  [42],
  true,
  new Date(0),
  undefined,
);

/** Every use the app makes of the shelf before a page stands. */
async function use(): Promise<void> {
  const [row] = await listLogbooks(shelf);
  if (row === undefined) throw new Error("the logbook is out of reach");
  expect(row.name).toBe(logbook.name);
  expect(row.title.trim).toBeTypeOf("function");
  expect(sayDate(practiceDay(row.lastOpened, "UTC", 0))).not.toBe("");
  await noteOpened(shelf, row.name, "2026-03-11");
  await noteLaps(shelf, row.name, 3);
  const [after] = await listLogbooks(shelf);
  expect(after?.openedOn).toContain("2026-03-11");
  expect(after?.lapsSinceBackup).toBeGreaterThanOrEqual(3);
  expect(daysOpened(after ?? row)).toBeGreaterThan(0);
  for (const draft of await draftsFrom(shelf, `${row.name}/`)) expect(draft.text.trim).toBeTypeOf("function");
  for (const copy of await keptCopies(shelf, row.name)) {
    expect(sayDate(practiceDay(copy.madeAt, "UTC", 0))).not.toBe("");
    expect(copy.laps.toLocaleString("en")).toMatch(/^\d/);
  }
  const folder = await backupFolder(shelf, row.name);
  if (folder !== undefined) expect(folder.handle).toBeTypeOf("object");
  await forgetOldCopies(shelf, after ?? row);
  await deleteUnlisted(shelf, today);
  for (const { marks } of await shelf.sent.toArray()) expect(marks.get("other")).toBeUndefined();
  for (const { waiting } of await shelf.deleted.toArray()) expect([...waiting.keys()]).toBeDefined();
  await noteBackup(shelf, row.name);
}

test("a logbook is reached and used whatever the rows beside it hold", async () => {
  const tables = Object.keys(keys) as Table[];
  const before = await Promise.all(tables.map((table) => shelf.database.table(table).toArray()));
  await fc.assert(
    fc.asyncProperty(fc.nat(), fc.nat(), odd, async (whichTable, whichField, value) => {
      for (const [at, table] of tables.entries()) {
        await shelf.database.table(table).clear();
        await shelf.database.table(table).bulkPut(before[at] ?? []);
      }
      const at = whichTable % tables.length;
      const table = tables[at] as Table;
      const [row] = before[at] ?? [];
      const link = table === "kept" ? ["id", "logbook"] : [keys[table]];
      const fields = Object.keys(row).filter((field) => !link.includes(field));
      const field = fields[whichField % fields.length] as string;
      await shelf.database.table(table).put({ ...row, [field]: value });
      await use();
    }),
    { seed: 20261128, numRuns: 600 },
  );
});

test("what is mended in one row changes nothing in the others and nothing that is right", async () => {
  const other = await createLogbook(shelf, { title: "Other" });
  await shelf.database.table("logbooks").put({ ...logbook, openedOn: 42, title: "Kept" });
  const rows = await listLogbooks(shelf);
  expect(rows.find(({ name }) => name === logbook.name)).toMatchObject({ title: "Kept", openedOn: [] });
  expect(rows.find(({ name }) => name === other.name)).toMatchObject(other);
});
