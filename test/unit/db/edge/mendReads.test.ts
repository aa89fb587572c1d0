import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { idMaker, openShelf } from "#db";
import { aLogbook } from "../../../support/aLogbook.ts";
import { absent, withAt } from "../../../support/wholeRows.ts";

const at = Date.UTC(2026, 2, 10);
let opened = 0;
async function aShelf() {
  opened += 1;
  const clock = () => at;
  return openShelf({ clock, newId: idMaker(clock), name: `shelf-to-mend-${opened}` });
}

const handle = { kind: "directory" };
/** A whole row of every table of the shelf. */
const rows = {
  logbooks: {
    name: "lap-ledger-1",
    title: "Mine",
    kind: "demo",
    createdAt: at,
    lastOpened: at,
    turn: 3,
    lastBackupAt: at,
    lapsSinceBackup: 4,
    openedOn: ["2026-03-09", "2026-03-10"],
    daysOpened: 2,
    purgedOn: "2026-03-10",
    toldAhead: at,
  },
  drafts: { key: "lap-ledger-1/entry", text: "4912", tab: "tab", at, state: { lines: [] } },
  kept: {
    id: "k",
    logbook: "lap-ledger-1",
    title: "Mine",
    madeAt: at,
    n: 2,
    mark: 1.5,
    openDay: 2,
    why: "merge",
    sessions: 1,
    laps: 2,
    bytes: 3,
  },
  folders: {
    logbook: "lap-ledger-1",
    handle,
    tag: "ab12",
    lastGoodAt: at,
    lastFile: "a.json",
    stopped: "no room",
    seen: { cd34: "b.json" },
  },
  unlisted: { name: "lap-ledger-2", since: at, seenOn: "2026-03-10" },
  sent: { logbook: "lap-ledger-1", at, marks: new Map([["row", 1]]) },
  deleted: { logbook: "lap-ledger-1", waiting: new Map([["row", { deletedAt: 1, day: 1 }]]) },
} as const;
type Table = keyof typeof rows;

/** What a field cannot hold, and what is read in place of it; `absent` where it is then read as not there. */
type Mended = readonly [wrong: readonly unknown[], instead: unknown];

const noInstant = ["12", Number.NaN, 8.64e15, null];
const noCount = [-1, 0.5, "1", null];
const noText = [7, null, ["x"]];
const noDay = [20_260_310, "2026-3-10", "on 2026-03-10", "2026-03-10 late", null];
const needed = <W extends readonly unknown[]>(wrong: W) => [...wrong, absent];

const mends: { readonly [T in Table]: Readonly<Record<string, Mended>> } = {
  logbooks: {
    title: [needed(noText), "My logbook"],
    kind: [needed(["other", 7]), "own"],
    createdAt: [needed(noInstant), 0],
    lastOpened: [needed(noInstant), 0],
    turn: [noCount, absent],
    lastBackupAt: [noInstant, absent],
    lapsSinceBackup: [needed(noCount), 0],
    openedOn: [needed([{}, "2026-03-10", ["2026-03-10", 7], ...noDay.map((day) => [day])]), []],
    daysOpened: [noCount, absent],
    purgedOn: [noDay, absent],
    toldAhead: [noInstant, absent],
  },
  drafts: { text: [needed(noText), ""], tab: [noText, absent], at: [noInstant, absent] },
  kept: {
    title: [needed(noText), ""],
    madeAt: [needed(noInstant), 0],
    n: [noCount, absent],
    mark: [["1", Number.NaN, null], absent],
    openDay: [noCount, absent],
    why: [needed(["other", 7]), "replace"],
    sessions: [needed(noCount), 0],
    laps: [needed(noCount), 0],
    bytes: [needed(noCount), 0],
  },
  folders: {
    tag: [needed(noText), ""],
    lastGoodAt: [noInstant, absent],
    lastFile: [noText, absent],
    stopped: [noText, absent],
    seen: [needed([7, null, [], { cd34: 7 }, { cd34: "b.json", ef56: 7 }]), {}],
  },
  unlisted: { since: [needed(noInstant), 0], seenOn: [noDay, absent] },
  sent: { at: [needed(noInstant), 0], marks: [needed([{}, [], null]), new Map()] },
  deleted: { waiting: [needed([{}, [], null]), new Map()] },
};

const keys: { readonly [T in Table]: string } = {
  logbooks: "name",
  drafts: "key",
  kept: "id",
  folders: "logbook",
  unlisted: "name",
  sent: "logbook",
  deleted: "logbook",
};

for (const table of Object.keys(rows) as Table[])
  test(`what no field of ${table} can hold is gone around in its place, and all else is read as it stands`, async () => {
    const shelf = await aShelf();
    const stored = shelf.database.table<object, string>(table);
    const whole: Readonly<Record<string, unknown>> = rows[table];
    const key = String(whole[keys[table]]);
    await stored.put(whole);
    expect(await stored.get(key)).toEqual(whole);
    expect(await stored.toArray()).toEqual([whole]);
    for (const [field, [wrong, instead]] of Object.entries(mends[table])) {
      for (const value of wrong) {
        await stored.put(withAt(whole, field, value));
        const mended = { ...whole, [field]: instead === absent ? undefined : instead };
        const said = `${field} ${String(value)}`;
        expect(await stored.get(key), said).toEqual(mended);
        expect(await stored.bulkGet([key, "nowhere"]), said).toEqual([mended, undefined]);
        expect(await stored.toArray(), said).toEqual([mended]);
      }
      if (instead !== absent) continue;
      const bare = withAt(whole, field, absent);
      await stored.put(bare);
      expect(await stored.get(key), field).toEqual(bare);
    }
    expect(await stored.get("nowhere")).toBeUndefined();
    expect(await stored.toCollection().primaryKeys()).toEqual([key]);
    shelf.close();
  });

test("the words and the beginnings that a row of the shelf may hold are read as they stand", async () => {
  const shelf = await aShelf();
  const [logbooks, kept] = [shelf.database.table("logbooks"), shelf.database.table("kept")];
  for (const kind of ["own", "demo"]) {
    await logbooks.put({ ...rows.logbooks, kind, turn: 0, openedOn: [] });
    expect(await logbooks.toArray()).toMatchObject([{ kind, turn: 0, openedOn: [] }]);
  }
  for (const why of ["session", "merge", "replace"]) {
    await kept.put({ ...rows.kept, why, mark: -0.5 });
    expect(await kept.toArray()).toMatchObject([{ why, mark: -0.5 }]);
  }
  shelf.close();
});

test("a folder that is none is as if none had been chosen", async () => {
  const shelf = await aShelf();
  const [whole, key] = [rows.folders, "lap-ledger-1"];
  const stored = shelf.database.table<object, string>("folders");
  for (const handle of [7, "folder", null, [], absent]) {
    await stored.put(withAt(whole, "handle", handle));
    expect(await stored.get(key)).toBeUndefined();
    expect(await stored.bulkGet([key])).toEqual([undefined]);
    expect(await stored.toArray()).toEqual([]);
    await stored.put(withAt(withAt(whole, "handle", handle), "tag", 7));
    expect(await stored.get(key), "also where more than the folder is wrong").toBeUndefined();
  }
  shelf.close();
});

test("a mark or an answer that cannot be right is as if it had never been", async () => {
  const { book } = await aLogbook();
  const [marks, answers] = [book.database.table("changeMarks"), book.database.table("keptAnswers")];
  const [mark, answer] = [
    { id: "combo", mark: "m" },
    { id: "combo level", mark: "m", version: "3/1", answer: { n: 1 } },
  ];
  await marks.put(mark);
  await answers.put(answer);
  expect(await marks.toArray()).toEqual([mark]);
  expect(await answers.toArray()).toEqual([answer]);
  for (const wrong of ["", 7, null, absent]) {
    await marks.put(withAt(mark, "mark", wrong));
    expect(await marks.get("combo"), String(wrong)).toBeUndefined();
    for (const field of ["mark", "version"]) {
      await answers.put(withAt(answer, field, wrong));
      expect(await answers.toArray(), `${field} ${String(wrong)}`).toEqual([]);
    }
  }
  book.close();
});

test("of a row set aside that cannot be right, what can be drawn is read", async () => {
  const { book } = await aLogbook();
  const aside = book.database.table("aside");
  const whole = {
    id: "0123456789abcdef",
    table: "cars",
    schema: 2,
    why: "name: not a text",
    row: { name: 7 },
  };
  const { row: _, ...settled } = whole;
  for (const right of [whole, settled]) {
    await aside.put(right);
    expect(await aside.toArray()).toEqual([right]);
  }
  const wrong: readonly (readonly [string, unknown, unknown])[] = [
    ["table", 7, "nowhere"],
    ["table", absent, "nowhere"],
    ["schema", "new", 1],
    ["schema", -1, 1],
    ["why", {}, ""],
    ["row", 7, { value: 7 }],
    ["row", null, { value: null }],
    ["row", ["x"], { value: ["x"] }],
  ];
  for (const [field, value, instead] of wrong) {
    await aside.put(withAt(whole, field, value));
    expect(await aside.toArray(), `${field} ${String(value)}`).toEqual([{ ...whole, [field]: instead }]);
  }
  book.close();
});
