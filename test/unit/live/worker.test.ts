import "fake-indexeddb/auto";
import { Dexie } from "dexie";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { addCombo, deleteDatabase, idMaker, openLogbook } from "#db";
import type { FromWorker, ToWorker } from "../../../src/live/workerMessages.ts";
import { addSessions } from "../../support/addSessions.ts";
import { aLogbook } from "../../support/aLogbook.ts";
import { aShelvedEvening } from "../../support/aShelvedEvening.ts";
import { putRaw } from "../../support/damage.ts";
import { failReadsOf } from "../../support/unreadableRows.ts";

// The script listens to whatever begins it.
let hear: (event: { readonly data: ToWorker }) => Promise<void> = async () => undefined;
vi.stubGlobal("addEventListener", (kind: string, listen: typeof hear) => {
  if (kind === "message") hear = listen;
});
await import("../../../src/live/worker.ts");
vi.unstubAllGlobals();

let posted: FromWorker[] = [];
let mend: (() => void) | undefined;
beforeEach(() => {
  posted = [];
  vi.stubGlobal("postMessage", (message: FromWorker) => posted.push(structuredClone(message)));
});
afterEach(() => {
  mend?.();
  mend = undefined;
  vi.unstubAllGlobals();
});

const search = { name: "search", details: { terms: {}, most: 5 } } as const;

/** Asks, and gives all that came back about it. */
async function asked(number: number, wanted: Record<string, unknown>): Promise<FromWorker[]> {
  await hear({ data: { number, ...wanted } as unknown as ToWorker });
  return posted.filter((message) => message.number === number);
}
const searched = (number: number, logbook: string) => asked(number, { kind: "job", logbook, ...search });

async function evenings(count: number, name?: string) {
  const { book } = name === undefined ? await aLogbook() : { book: await openLogbook({ name, ...tools() }) };
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const day = { date: "2026-03-01", laps: [84_000, 84_100] };
  await addSessions(book, comboId, Array<typeof day>(count).fill(day));
  return book;
}

const tools = () => ({ clock: Date.now, newId: idMaker(Date.now) });

test("a job is answered under its number with figures of the logbook it names", async () => {
  const [two, three] = [await evenings(2), await evenings(3)];
  const found = await Promise.all([searched(1, two.name), searched(2, three.name)]);
  expect(found).toMatchObject([
    [{ number: 1, kind: "result", result: { sessionCount: 2 } }],
    [{ number: 2, kind: "result", result: { sessionCount: 3 } }],
  ]);
  expect(posted).toHaveLength(2);
  two.close();
  three.close();
});

test("what is stored after the first job is in the second one", async () => {
  const book = await evenings(1);
  expect(await searched(1, book.name)).toMatchObject([{ result: { sessionCount: 1 } }]);
  const combo = await book.tables.combos.toCollection().first();
  await addSessions(book, combo?.id ?? "", [{ date: "2026-03-02", laps: [84_000] }]);
  const opening = vi.spyOn(Dexie.prototype, "open");
  expect(await searched(2, book.name)).toMatchObject([{ result: { sessionCount: 2 } }]);
  // The connection of the first one is still open.
  expect(opening).not.toHaveBeenCalled();
  opening.mockRestore();
  book.close();
});

test("a logbook that is not there is a fault with its code, and is found once it is there", async () => {
  expect(await searched(1, "not-yet")).toMatchObject([
    { number: 1, kind: "fault", code: "gone", text: expect.stringContaining("has disappeared") },
  ]);
  const book = await evenings(1, "not-yet");
  expect(await searched(2, "not-yet")).toMatchObject([{ kind: "result", result: { sessionCount: 1 } }]);
  book.close();
});

test("a logbook that was deleted and made again is opened again", async () => {
  const book = await evenings(1);
  await searched(1, book.name);
  book.close();
  await deleteDatabase(book.name);
  const again = await evenings(2, book.name);
  expect(await searched(2, book.name)).toMatchObject([{ kind: "result", result: { sessionCount: 2 } }]);
  again.close();
});

test("what goes wrong otherwise is a fault with its words", async () => {
  const book = await evenings(1);
  const [fault] = await asked(1, { kind: "job", logbook: book.name, name: "none", details: null });
  expect(fault).toMatchObject({ number: 1, kind: "fault", code: "failed" });
  expect(fault).toMatchObject({ text: expect.stringContaining("is not a function") });
  book.close();
});

test("a run that cannot be read is named with each answer as long as it cannot be read", async () => {
  const book = await evenings(1);
  const run = await book.tables.runs.toCollection().first();
  const id = run?.id ?? "";
  await asked(4, { kind: "job", logbook: book.name, name: "freshen", details: null });
  expect(await searched(1, book.name)).toMatchObject([
    { kind: "result", result: { sessions: [{ laps: 2 }] } },
  ]);
  mend = failReadsOf([{ table: "runs", id }]);
  for (const number of [2, 3])
    expect(await searched(number, book.name)).toMatchObject([
      { kind: "unreadable", rows: [{ table: "runs", id }] },
      { kind: "result", result: { sessions: [{ laps: 0 }] } },
    ]);
  // It stays named in the answer of a job that does not come upon it.
  expect(await asked(5, { kind: "job", logbook: book.name, name: "freshen", details: null })).toMatchObject([
    { kind: "unreadable", rows: [{ table: "runs", id }] },
    { kind: "result", result: 0 },
  ]);
  book.close();
});

test("a row that holds what cannot be right is named once, for the page sets it aside", async () => {
  const book = await evenings(1);
  const session = await book.tables.sessions.toCollection().first();
  if (session === undefined) throw new Error("no session");
  await putRaw(book.name, "sessions", { ...session, date: 42 });
  const found = await searched(1, book.name);
  expect(found).toMatchObject([
    { kind: "unreadable", rows: [{ table: "sessions", id: session.id }] },
    { kind: "result", result: { sessionCount: 0 } },
  ]);
  await putRaw(book.name, "sessions", session);
  expect(await searched(2, book.name)).toMatchObject([{ kind: "result", result: { sessionCount: 1 } }]);
  book.close();
});

test("an errand tells how far it is and brings its result back", async () => {
  const { name, book, shelf } = await aShelvedEvening();
  const details = { title: "Evenings", isSmall: false };
  const told = await asked(7, { kind: "errand", logbook: name, name: "backup", details });
  expect(told.slice(0, -1)).toEqual([
    { number: 7, kind: "progress", progress: { step: "Reading the logbook" } },
    { number: 7, kind: "progress", progress: { step: "Writing the file" } },
  ]);
  const last = told.at(-1);
  const bytes = last?.kind === "result" ? (last.result as Uint8Array) : new Uint8Array();
  expect(new TextDecoder().decode(bytes)).toContain('"Evenings"');
  book.close();
  shelf.close();
});

test("an errand that is told to stop by its number ends in the fault of that, and another one goes on", async () => {
  const { name, book, shelf } = await aShelvedEvening();
  const details = { title: "Evenings", isSmall: false };
  const errand = { kind: "errand", logbook: name, name: "backup", details };
  const both = Promise.all([asked(1, errand), asked(2, errand)]);
  await hear({ data: { number: 1, kind: "stop" } });
  // A stop of what is not under way is heard by nobody.
  await hear({ data: { number: 9, kind: "stop" } });
  const [stopped, done] = await both;
  expect(stopped.at(-1)).toMatchObject({
    kind: "fault",
    code: "cancelled",
    text: "Stopped; nothing was changed.",
  });
  expect(done.at(-1)).toMatchObject({ kind: "result" });
  book.close();
  shelf.close();
});
