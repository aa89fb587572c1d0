import "fake-indexeddb/auto";
import { Dexie } from "dexie";
import { expect, test, vi } from "vitest";
import { dump } from "#db";
import { sendHere } from "#live";
import { errandsAboutOneFile } from "../../../src/live/runErrand.ts";
import { aShelvedEvening, fileOf } from "../../support/aShelvedEvening.ts";
import { putRaw } from "../../support/damage.ts";

const aDay = 86_400_000;
const merging = { from: "PC", title: "Evenings", isDateConfirmed: false };

test("an errand on a logbook that is not there makes none, and leaves nothing open", async () => {
  const { tools, book, shelf } = await aShelvedEvening();
  const sent = sendHere(tools)("no-such-book", "keep", { title: "Evenings", why: "merge" });
  await expect(sent).rejects.toMatchObject({ code: "gone" });
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain("no-such-book");
  book.close();
  shelf.close();
});

test("an errand closes what it has opened, whether it is done or fails", async () => {
  const { name, book, shelf, send } = await aShelvedEvening();
  const closing = vi.spyOn(Dexie.prototype, "close");
  const closed = () => closing.mock.contexts.map((database) => (database as Dexie).name).splice(0);
  await send(name, "backup", { title: "Evenings", isSmall: false });
  expect(closed()).toEqual([name, shelf.database.name]);
  closing.mockClear();
  await expect(send(name, "merge", { source: new Blob(["{}"]), ...merging })).rejects.toThrow();
  expect(closed()).toEqual([name, shelf.database.name]);
  closing.mockClear();
  await expect(send("no-such-book", "keep", { title: "Evenings", why: "merge" })).rejects.toThrow();
  expect(closed()).toEqual([shelf.database.name]);
  closing.mockRestore();
  book.close();
  shelf.close();
});

test("a row of the file stamped more than a day ahead of this device's clock is told, one less ahead is not", async () => {
  const { name, book, shelf, clock, send } = await aShelvedEvening();
  const rows = await dump(book);
  const looked = async (ahead: number) => {
    const sessions = rows.sessions.map((row) => ({ ...row, updatedAt: clock.now() + ahead }));
    const found = await send(name, "look", { source: await fileOf({ ...rows, sessions }) });
    return found.ok ? found.preview.merging.ahead : undefined;
  };
  expect(await looked(aDay)).toBeUndefined();
  expect(await looked(aDay + 1)).toEqual({ count: 1, newest: clock.now() + aDay + 1 });
  book.close();
  shelf.close();
});

test("a row that holds what cannot be right is set aside by the errand that comes upon it", async () => {
  const { name, book, shelf, sessionId, send } = await aShelvedEvening();
  const session = await book.tables.sessions.get(sessionId);
  await putRaw(name, "sessions", { ...session, date: 42 });
  await send(name, "backup", { title: "Evenings", isSmall: false });
  expect(await book.aside?.toArray()).toMatchObject([{ table: "sessions" }]);
  expect(await book.tables.sessions.count()).toBe(0);
  book.close();
  shelf.close();
});

test("errands about one file read it once, where each by itself reads it again", async () => {
  const { tools, name, book, shelf } = await aShelvedEvening();
  const source = await fileOf(await dump(book));
  const reads = () => {
    let count = 0;
    const counted = new Proxy(source, {
      get: (blob, key) => {
        const value = Reflect.get(blob, key) as unknown;
        if (typeof value !== "function") return value;
        if (key === "stream" || key === "text" || key === "arrayBuffer") count += 1;
        return value.bind(blob) as unknown;
      },
    });
    return { counted, count: () => count };
  };
  const [once, often] = [reads(), reads()];
  for (const [send, { counted }] of [
    [errandsAboutOneFile(tools), once],
    [sendHere(tools), often],
  ] as const) {
    expect(await send(name, "look", { source: counted })).toMatchObject({ ok: true });
    expect(await send(name, "merge", { source: counted, ...merging })).toMatchObject({ rows: 0 });
  }
  expect(often.count()).toBe(2 * once.count());
  book.close();
  shelf.close();
});
