import { act } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import {
  addCombo,
  addLap,
  createLogbook,
  draftKey,
  dump,
  LedgerFault,
  type Logbook,
  listLogbooks,
  openLogbook,
  readDrafts,
  type ShelvedLogbook,
  startSession,
  writeDraft,
} from "#db";
import type { Id } from "#domain";
import { type SendOut, useLeaveDemo } from "#live";
import { aLap } from "../../support/aLap.ts";
import { fileOf } from "../../support/aShelvedEvening.ts";
import { hooksAt, said } from "../../support/hooksAt.tsx";

afterEach(() => vi.unstubAllGlobals());

/** The demo stands open: an evening it came with, and these laps that the driver typed into it. */
async function inTheDemo(typed: readonly number[], instead?: Parameters<typeof hooksAt>[1]) {
  let runId: Id = "";
  let file = new Blob();
  const page = await hooksAt(async (book: Logbook) => {
    const { comboId } = await addCombo(book, {
      car: { name: "Club hatch" },
      track: { name: "Varnholt Ring" },
    });
    ({ runId } = await startSession(book, { comboId, date: "2026-11-20", zone: "UTC" }));
    await addLap(book, { runId, id: book.newId(), lap: aLap(83_456) });
    file = await fileOf(await dump(book), "Demo season");
  }, instead);
  const { book, clock, shelf, entry, surroundings, draw } = page;
  await shelf.logbooks.update(entry.name, { kind: "demo", title: "Demo season" });
  clock.pass(60_000);
  for (const ms of typed) await addLap(book, { runId, id: book.newId(), lap: aLap(ms) });
  const asked: string[] = [];
  vi.stubGlobal("fetch", async (address: string) => {
    asked.push(address);
    return { ok: true, blob: async () => file } as Response;
  });
  const { result } = draw(() => useLeaveDemo("demo.json"));
  const demo: ShelvedLogbook = { ...entry, kind: "demo", title: "Demo season" };
  const type = (of: string, tab: string, text: string) =>
    writeDraft(shelf, { key: draftKey(`${entry.name}/${of}`, tab), tab, text, state: { text } });
  const lapsIn = async (name: string) => {
    const other = await openLogbook({ name, ...surroundings });
    const { runs } = await dump(other);
    other.close();
    return runs.flatMap(({ laps }) => laps.map(({ ms }) => ms));
  };
  const leave = (to?: ShelvedLogbook) => act(() => result.current.moveAndRemove(demo, to));
  return { ...page, demo, asked, type, lapsIn, leave, look: () => act(() => result.current.look(demo)) };
}

it("says what the driver typed in the demo and what is half typed there, in any tab", async () => {
  const { look, type, asked } = await inTheDemo([83_000, 82_900]);
  await type("entry s", "here", " 1:24.1 ");
  await type("lap l", "gone", "a note");
  await type("form", "gone", "  ");
  const found = await look();
  expect(found).toMatchObject({ laps: 2, sessions: [{ date: "2026-11-20", laps: 2 }] });
  expect(found?.halfTyped).toEqual(["1:24.1", "a note"]);
  expect(asked).toEqual([new URL("demo.json", document.baseURI).href]);
});

it("what was typed and half typed goes to the driver's own logbook, and the demo is removed", async () => {
  const { leave, shelf, type, lapsIn, demo, openOther, surroundings } = await inTheDemo([83_000, 82_900]);
  const own = await createLogbook(shelf, { title: "Evenings" });
  (await openLogbook({ name: own.name, ...surroundings })).close();
  await type("entry s", "here", "1:24.1");
  expect(await leave(own)).toBe(true);
  // The session comes along with the laps that were typed into it, without those of the demo.
  expect(await lapsIn(own.name)).toEqual([83_000, 82_900]);
  expect((await readDrafts(shelf)).map(({ key, text }) => [key, text])).toEqual([
    [draftKey(`${own.name}/entry s`, "here"), "1:24.1"],
  ]);
  expect((await listLogbooks(shelf)).map(({ name, openedOn }) => [name, openedOn])).toEqual([
    [own.name, ["2026-11-25"]],
  ]);
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain(demo.name);
  expect(openOther.mock.calls).toEqual([[own.name]]);
  expect(said()).toEqual([
    { kind: "done", text: "The 2 laps you typed are in “Evenings”. “Demo season” is removed." },
  ]);
});

it("where the driver has no logbook one is made", async () => {
  const { leave, shelf, lapsIn } = await inTheDemo([83_000]);
  expect(await leave()).toBe(true);
  const [own] = await listLogbooks(shelf);
  expect(own).toMatchObject({ title: "My logbook", kind: "own" });
  expect(await lapsIn(own?.name ?? "")).toEqual([83_000]);
  expect(said()[0]?.text).toBe("The lap you typed is in “My logbook”. “Demo season” is removed.");
});

it("where only other things were typed no lap is spoken of", async () => {
  const { leave, book } = await inTheDemo([]);
  await addCombo(book, { car: { name: "Junior kart" }, track: { name: "Varnholt Ring" } });
  expect(await leave()).toBe(true);
  expect(said()[0]?.text).toBe("What you typed is in “My logbook”. “Demo season” is removed.");
});

it("where it cannot be told or moved that is said, and the demo stays as it is", async () => {
  const refusing: SendOut = async () => {
    throw new LedgerFault("failed", "The demo could not be compared.");
  };
  const { look, leave, book, shelf, openOther } = await inTheDemo([83_000], { sendOut: refusing });
  expect(await look()).toBeUndefined();
  expect(await leave()).toBe(false);
  expect(said().map(({ text }) => text)).toEqual([
    "The demo could not be compared.",
    "The demo could not be compared.",
  ]);
  expect(openOther).not.toHaveBeenCalled();
  expect((await listLogbooks(shelf)).map(({ name }) => name)).toEqual([book.name]);
  const slipping: SendOut = async () => Promise.reject(new TypeError("a slip"));
  const other = await inTheDemo([], { sendOut: slipping });
  await expect(other.leave()).rejects.toThrow("a slip");
});

it("a logbook that has disappeared takes nothing in, and the demo stays", async () => {
  const { leave, shelf, demo, book } = await inTheDemo([83_000]);
  const gone = await createLogbook(shelf, { title: "Gone" });
  await shelf.logbooks.update(gone.name, { openedOn: ["2026-11-01"] });
  expect(await leave({ ...gone, openedOn: ["2026-11-01"] })).toBe(false);
  expect(said()).toMatchObject([{ kind: "fault", text: expect.stringContaining("has disappeared") }]);
  expect((await dump(book)).runs.flatMap(({ laps }) => laps)).toHaveLength(2);
  expect(await shelf.logbooks.get(demo.name)).toMatchObject({ kind: "demo" });
});
