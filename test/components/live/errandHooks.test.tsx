import { act, waitFor } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import {
  addCombo,
  addLap,
  createLogbook,
  dump,
  editLap,
  keptCopies,
  LedgerFault,
  type Logbook,
  listLogbooks,
  openLogbook,
  startSession,
} from "#db";
import { putDatesRight, type SendOut, useErrand, useIncoming, useLoadDemo, useRemoveLogbook } from "#live";
import { useDevice } from "#state/device.ts";
import { useUndo } from "#state/undo.ts";
import { mergeDeed } from "../../../src/live/mergeDeed.ts";
import { aLap } from "../../support/aLap.ts";
import { fileOf } from "../../support/aShelvedEvening.ts";
import { hooksAt, press, said } from "../../support/hooksAt.tsx";

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

interface Sent {
  readonly logbook: string;
  readonly errand: string;
  readonly details: unknown;
  readonly follow: Parameters<SendOut>[3];
  readonly resolve: (result: unknown) => void;
  readonly reject: (error: unknown) => void;
}

/** A page whose errands wait until the test answers them. */
async function waitingPage(how?: Parameters<typeof useErrand>[0]) {
  const sent: Sent[] = [];
  const sendOut = (logbook: string, errand: string, details: unknown, follow: Sent["follow"]) =>
    new Promise((resolve, reject) => sent.push({ logbook, errand, details, follow, resolve, reject }));
  const page = await hooksAt(undefined, { sendOut: sendOut as unknown as SendOut });
  const drawn = page.draw(() => useErrand(how));
  const send = (isSmall = false) => {
    let result: Promise<unknown> = Promise.resolve();
    act(() => {
      result = drawn.result.current.send("backup", { title: "Evenings", isSmall });
    });
    return result;
  };
  return { ...page, ...drawn, sent, send };
}

it("an errand goes out on the open logbook, says how far it is, and brings its result", async () => {
  const { result, send, sent, book } = await waitingPage();
  expect(result.current.progress).toBeUndefined();
  const done = send(true);
  expect(result.current.progress).toEqual({ step: "Beginning" });
  expect(sent).toMatchObject([
    { logbook: book.name, errand: "backup", details: { title: "Evenings", isSmall: true } },
  ]);
  act(() => sent[0]?.follow?.onProgress?.({ step: "Writing the file", share: 0.5 }));
  expect(result.current.progress).toEqual({ step: "Writing the file", share: 0.5 });
  await act(async () => sent[0]?.resolve("bytes"));
  expect(await done).toBe("bytes");
  expect(result.current.progress).toBeUndefined();
  expect(said()).toEqual([]);
});

it("a second errand stops the first, which says nothing any more", async () => {
  const { result, send, sent } = await waitingPage();
  const first = send();
  const second = send();
  expect(sent.map(({ follow }) => follow?.signal?.aborted)).toEqual([true, false]);
  act(() => sent[0]?.follow?.onProgress?.({ step: "late" }));
  await act(async () => sent[0]?.reject(new LedgerFault("cancelled", "Stopped; nothing was changed.")));
  expect(await first).toBeUndefined();
  expect(said()).toEqual([]);
  expect(result.current.progress).toEqual({ step: "Beginning" });
  await act(async () => sent[1]?.resolve("bytes"));
  expect(await second).toBe("bytes");
  expect(result.current.progress).toBeUndefined();
});

it("a fault of the first is said all the same", async () => {
  const { send, sent } = await waitingPage();
  void send();
  void send();
  await act(async () => sent[0]?.reject(new LedgerFault("failed", "Not done.")));
  expect(said()).toEqual([{ kind: "fault", text: "Not done." }]);
});

it("an errand that is stopped by the driver says so, as something done", async () => {
  const { result, send, sent } = await waitingPage();
  const done = send();
  act(() => result.current.stop());
  expect(sent[0]?.follow?.signal?.aborted).toBe(true);
  await act(async () => sent[0]?.reject(new LedgerFault("cancelled", "Stopped; nothing was changed.")));
  expect(await done).toBeUndefined();
  expect(said()).toEqual([{ kind: "done", text: "Stopped; nothing was changed." }]);
  expect(result.current.progress).toBeUndefined();
});

for (const [how, isStopped] of [
  [undefined, true],
  [{}, true],
  [{ goesOn: true }, false],
] as const)
  it(`when the part that sent it leaves the page, an errand sent with ${JSON.stringify(how)} ${isStopped ? "is stopped" : "goes on"}`, async () => {
    const { unmount, send, sent } = await waitingPage(how);
    void send();
    unmount();
    expect(sent[0]?.follow?.signal?.aborted).toBe(isStopped);
  });

it("an errand that found no space says how much its file needs, and an error of the app is not swallowed", async () => {
  const { result, sent } = await waitingPage();
  const source = new Blob(["x".repeat(2_500_000)]);
  let done: Promise<unknown> = Promise.resolve();
  act(() => {
    done = result.current.send("restore", { source, name: "new" });
  });
  await act(async () => sent[0]?.reject(new LedgerFault("quota", "No space.")));
  expect(await done).toBeUndefined();
  await waitFor(() =>
    expect(said()[0]?.text).toMatch(/^No space\. Nothing was changed\. It needs about 2\.5 MB/),
  );
  act(() => {
    done = result.current.send("keep", { title: "Evenings", why: "merge" });
  });
  await act(async () => sent[1]?.reject(new LedgerFault("quota", "No space.")));
  await waitFor(() => expect(said().at(-1)?.text).toBe("No space. Nothing was changed."));
  act(() => {
    done = result.current.send("afterSession", null);
  });
  done.catch(() => undefined);
  await act(async () => sent[2]?.reject(new TypeError("a slip")));
  await expect(done).rejects.toThrow("a slip");
});

let lap = { runId: "", lapId: "" };
async function anEvening(book: Logbook) {
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Marlow Fen" } });
  const { runId } = await startSession(book, { comboId, date: "2026-11-25", zone: "UTC" });
  lap = { runId, lapId: book.newId() };
  await addLap(book, { runId, id: lap.lapId, lap: aLap(83_456) });
}

/** A page with an evening, the ways of a file into it, and a file of the evening with its lap a second faster. */
async function incoming(instead?: Parameters<typeof hooksAt>[1]) {
  const page = await hooksAt(anEvening, instead);
  const { book, clock, shelf, surroundings } = page;
  const same = await fileOf(await dump(book), "From the PC");
  const rows = await dump(book);
  const faster = rows.runs.map((run) => ({
    ...run,
    laps: run.laps.map((one) => ({ ...one, ms: 82_456, updatedAt: one.updatedAt + 1000 })),
  }));
  const file = await fileOf({ ...rows, runs: faster }, "From the PC");
  clock.pass(60_000);
  const { result } = page.draw(() => useIncoming());
  const timesIn = async (of: Logbook) => (await dump(of)).runs.flatMap((run) => run.laps.map(({ ms }) => ms));
  const times = () => timesIn(book);
  const titles = async () => (await listLogbooks(shelf)).map(({ title }) => title).sort();
  const inNew = async (name: string) => {
    const other = await openLogbook({ name, ...surroundings });
    return timesIn(other).finally(() => other.close());
  };
  return { ...page, file, same, times, titles, inNew, ways: () => result.current };
}

const notOne = new Blob(["{}"]);

it("a file becomes a logbook of its own under the title in it, and is opened", async () => {
  const { ways, file, titles, openOther, inNew, times } = await incoming();
  await act(async () => expect(await ways().asNew(file, { kind: "own" })).toBe(true));
  expect(await titles()).toEqual(["From the PC", "My logbook"]);
  const [name = ""] = openOther.mock.calls[0] ?? [];
  expect(await inNew(name)).toEqual([82_456]);
  expect(await times()).toEqual([83_456]);
  expect(said()).toEqual([{ kind: "done", text: "“From the PC” is open. Your other logbooks are on Data." }]);
});

it("or under a title of the driver's, and a demo is known as one", async () => {
  const { ways, file, shelf } = await incoming();
  await act(async () => void (await ways().asNew(file, { title: "Demo", kind: "demo" })));
  expect(
    await shelf.logbooks.where({ name: (await listLogbooks(shelf))[0]?.name ?? "" }).first(),
  ).toMatchObject({
    title: "Demo",
    kind: "demo",
  });
});

it("a file that is no backup becomes nothing, and leaves no database behind", async () => {
  const { ways, titles, openOther } = await incoming();
  const before = (await indexedDB.databases()).length;
  await act(async () => expect(await ways().asNew(notOne, { kind: "own" })).toBe(false));
  expect(said()).toMatchObject([{ kind: "fault", text: expect.stringMatching(/Nothing was changed\.$/) }]);
  expect(await titles()).toEqual(["My logbook"]);
  expect(openOther).not.toHaveBeenCalled();
  expect((await indexedDB.databases()).length).toBe(before);
});

it("one that cannot be entered in the list is removed again", async () => {
  const { ways, file, titles, shelf, openOther } = await incoming();
  const before = (await indexedDB.databases()).map(({ name }) => name).sort();
  vi.spyOn(shelf.logbooks, "put").mockRejectedValue(new DOMException("full", "QuotaExceededError"));
  vi.spyOn(shelf.logbooks, "add").mockRejectedValue(new DOMException("full", "QuotaExceededError"));
  await act(async () => expect(await ways().asNew(file, { kind: "own" })).toBe(false));
  expect(said()).toMatchObject([{ kind: "fault" }]);
  expect(openOther).not.toHaveBeenCalled();
  vi.restoreAllMocks();
  expect(await titles()).toEqual(["My logbook"]);
  expect((await indexedDB.databases()).map(({ name }) => name).sort()).toEqual(before);
});

it("a file is merged in one step that can be undone", async () => {
  const { ways, file, times } = await incoming();
  await act(async () => expect(await ways().merge(file, "backup of the PC", false)).toBe(true));
  expect(await times()).toEqual([82_456]);
  expect(said()[0]?.text).toMatch(/^Merged: backup of the PC.*\. One row added or changed\.$/);
  await act(async () => press("Undo"));
  await waitFor(() => expect(said()[0]?.text).toMatch(/^Undone: Merged: backup of the PC[^:]*\.$/));
  expect(await times()).toEqual([83_456]);
  // To do it again the file is merged again.
  expect(useUndo.getState()).toMatchObject({ done: [], undone: [] });
});

it("more rows than one are counted, and a merge that brings nothing says so and cannot be undone", async () => {
  const { ways, same } = await incoming();
  await act(async () => expect(await ways().merge(same, "PC", false)).toBe(true));
  expect(said()).toEqual([{ kind: "done", text: "Nothing to merge: all of it is here already." }]);
  expect(useUndo.getState().done).toEqual([]);
  const empty = await hooksAt();
  const { result } = empty.draw(() => useIncoming());
  await act(async () => void (await result.current.merge(same, "PC", false)));
  // Car, track, layout, combo, session, run.
  expect(said()[0]?.text).toMatch(/ 6 rows added or changed\.$/);
});

it("what was changed since a merge stays when it is undone, and is named; an undo that fails is said", async () => {
  const { ways, file, book, clock, times } = await incoming();
  await act(async () => void (await ways().merge(file, "PC", false)));
  clock.pass(1000);
  await editLap(book, { ...lap, patch: { ms: 81_000 } });
  await act(async () => press("Undo"));
  await waitFor(() => expect(said()[0]?.text).toMatch(/^Undone: .* Left as it is: .+\.$/));
  expect(await times()).toEqual([81_000]);
});

it("a merge that cannot be taken back says why", async () => {
  const { ways, file, shelf } = await incoming();
  await act(async () => void (await ways().merge(file, "PC", false)));
  await shelf.packs.clear();
  await act(async () => press("Undo"));
  await waitFor(() => expect(said().at(-1)).toMatchObject({ kind: "fault" }));
});

it("an error of the app in taking a merge back is not swallowed", async () => {
  const failing = mergeDeed({
    sendOut: async () => Promise.reject(new TypeError("a slip")),
    logbook: "book",
    source: new Blob(),
    done: { what: "Merged", rows: 1, mergedAt: 0, isDateConfirmed: false, copyId: "" },
  });
  await expect(failing.takeBack()).rejects.toThrow("a slip");
});

it("a merge that fails changes nothing and is no deed", async () => {
  const { ways, times } = await incoming();
  await act(async () => expect(await ways().merge(notOne, "PC", false)).toBe(false));
  expect(await times()).toEqual([83_456]);
  expect(useUndo.getState().done).toEqual([]);
});

it("a file takes the place of the open logbook, which is kept as it was", async () => {
  const { ways, file, titles, book, shelf, openOther, inNew } = await incoming();
  useDevice.getState().change({ markers: { [book.name]: { sessions: 1 }, other: { sessions: 2 } } });
  await act(async () => expect(await ways().replace(file)).toBe(true));
  expect(await titles()).toEqual(["My logbook"]);
  const [name = ""] = openOther.mock.calls[0] ?? [];
  expect(await inNew(name)).toEqual([82_456]);
  expect((await indexedDB.databases()).map((one) => one.name)).not.toContain(book.name);
  expect(useDevice.getState().markers).toEqual({ other: { sessions: 2 } });
  expect(await keptCopies(shelf, name)).toMatchObject([{ why: "replace", title: "My logbook", laps: 1 }]);
  expect(said()).toEqual([
    {
      kind: "done",
      text: "“My logbook” is replaced. As it was before, it is kept under “Earlier states” for thirty days of use.",
    },
  ]);
});

it("nothing is replaced by what is no backup, nor where the logbook cannot be kept before", async () => {
  const { ways, file, times, openOther, shelf } = await incoming();
  await act(async () => expect(await ways().replace(notOne)).toBe(false));
  expect(openOther).not.toHaveBeenCalled();
  expect(await times()).toEqual([83_456]);
  const refusing: SendOut = async () => {
    throw new LedgerFault("quota", "No space.");
  };
  const full = await incoming({ sendOut: refusing });
  await act(async () => expect(await full.ways().replace(file)).toBe(false));
  expect(full.openOther).not.toHaveBeenCalled();
  expect(await full.times()).toEqual([83_456]);
  shelf.close();
  await act(async () => expect(await ways().asNew(file, { kind: "own" })).toBe(false));
  expect(said().at(-1)).toMatchObject({ kind: "fault" });
});

it("where the logbook cannot be kept before, the file is not even read", async () => {
  const errands: string[] = [];
  const { ways, file, times } = await incoming({
    sendOut: async (_, errand) => {
      errands.push(errand);
      throw new LedgerFault("quota", "No space.");
    },
  });
  await act(async () => expect(await ways().replace(file)).toBe(false));
  expect(errands).toEqual(["keep"]);
  expect(await times()).toEqual([83_456]);
});

it("where a new database cannot be noted, none is begun", async () => {
  const sendOut = vi.fn(async () => Promise.reject(new LedgerFault("failed", "Not done.")));
  const { ways, file, shelf } = await incoming({ sendOut });
  shelf.close();
  await act(async () => expect(await ways().asNew(file, { kind: "own" })).toBe(false));
  expect(sendOut).not.toHaveBeenCalled();
  expect(said()).toHaveLength(1);
});

/** The page with the way to the demo, which lies at an address that answers so. */
async function demoAt(answer: () => Promise<Response>) {
  vi.stubGlobal("fetch", vi.fn(answer));
  const page = await hooksAt(anEvening);
  const file = await fileOf(await dump(page.book), "Demo season");
  const { result, unmount } = page.draw(() => useLoadDemo("demo.json"));
  return { ...page, file, unmount, demo: () => result.current };
}

it("the demo is fetched, becomes a logbook of its own and is opened; the second time it is opened as it is", async () => {
  let bytes = new Blob();
  const { demo, file, openOther, shelf } = await demoAt(
    async () => ({ ok: true, blob: async () => bytes }) as Response,
  );
  bytes = file;
  expect(demo().isLoading).toBe(false);
  await act(() => new Promise((done) => setTimeout(done, 50)));
  await act(async () => demo().load());
  await waitFor(() => expect(openOther).toHaveBeenCalledTimes(1));
  await waitFor(() => expect(demo().isLoading).toBe(false));
  expect(fetch).toHaveBeenCalledWith("demo.json");
  const [name] = openOther.mock.calls[0] ?? [];
  expect(await shelf.logbooks.get(name ?? "")).toMatchObject({ kind: "demo", title: "Demo season" });
  await act(() => new Promise((done) => setTimeout(done, 50)));
  await act(async () => demo().load());
  expect(openOther.mock.calls).toEqual([[name], [name]]);
  expect(fetch).toHaveBeenCalledTimes(1);
});

it("whoever leaves the page while the demo is loaded still gets it", async () => {
  let bytes = new Blob();
  const { demo, file, openOther, unmount } = await demoAt(
    async () => ({ ok: true, blob: async () => bytes }) as Response,
  );
  bytes = file;
  act(() => demo().load());
  unmount();
  await waitFor(() => expect(openOther).toHaveBeenCalledTimes(1));
});

it("while the demo is being fetched that is shown, and where it cannot be, that is said", async () => {
  let fail: (error: unknown) => void = () => undefined;
  const { demo, openOther } = await demoAt(
    () =>
      new Promise((_, reject) => {
        fail = reject;
      }),
  );
  await act(async () => demo().load());
  expect(demo().isLoading).toBe(true);
  await act(async () => fail(new TypeError("no network")));
  expect(said()).toEqual([
    {
      kind: "fault",
      text: "Demo logbook not loaded. The file could not be fetched. Try again when the connection is back. Nothing was changed.",
    },
  ]);
  expect(demo().isLoading).toBe(false);
  expect(openOther).not.toHaveBeenCalled();
});

/** A shelf of several logbooks, and the way to remove one. */
async function severalLogbooks(kinds: readonly ("own" | "demo")[]) {
  const page = await hooksAt(anEvening);
  const others = [];
  for (const [n, kind] of kinds.entries())
    others.push(await createLogbook(page.shelf, { title: `Other ${n}`, kind }));
  const { result } = page.draw(() => useRemoveLogbook());
  const names = async () => (await listLogbooks(page.shelf)).map(({ name }) => name).sort();
  const remove: typeof result.current = (...given) => act(() => result.current(...given));
  return { ...page, others, names, remove };
}

it("another logbook than the open one is removed with its rows, and the open one stays", async () => {
  const { remove, others, names, openOther, entry, surroundings } = await severalLogbooks(["own"]);
  const [other] = others;
  if (other === undefined) throw new Error("no other");
  (await openLogbook({ name: other.name, ...surroundings })).close();
  useDevice.getState().change({ markers: { [other.name]: { sessions: 1 }, [entry.name]: { sessions: 2 } } });
  await remove(other);
  expect(await names()).toEqual([entry.name]);
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain(other.name);
  expect(useDevice.getState().markers).toEqual({ [entry.name]: { sessions: 2 } });
  expect(openOther).not.toHaveBeenCalled();
  expect(said()).toEqual([{ kind: "done", text: "“Other 0” is removed." }]);
});

it("in the place of the open one comes the one wanted, else one of the driver's own, else any, else an empty one", async () => {
  const wanted = await severalLogbooks(["own", "own"]);
  await wanted.remove(wanted.entry, { next: wanted.others[0]?.name ?? "", before: "All is moved. " });
  expect(wanted.openOther.mock.calls).toEqual([[wanted.others[0]?.name]]);
  expect(said()).toEqual([{ kind: "done", text: "All is moved. “My logbook” is removed." }]);
  const own = await severalLogbooks(["own", "demo"]);
  await own.remove(own.entry);
  expect(own.openOther.mock.calls).toEqual([[own.others[0]?.name]]);
  const demo = await severalLogbooks(["demo"]);
  await demo.remove(demo.entry);
  expect(demo.openOther.mock.calls).toEqual([[demo.others[0]?.name]]);
  const none = await severalLogbooks([]);
  await none.remove(none.entry);
  const [made] = await listLogbooks(none.shelf);
  expect(made).toMatchObject({ title: "My logbook", kind: "own" });
  expect(made?.name).not.toBe(none.entry.name);
  expect(none.openOther.mock.calls).toEqual([[made?.name]]);
});

it("a logbook that cannot be removed is said, and can be tried again", async () => {
  const { remove, entry, shelf, names, others } = await severalLogbooks(["own"]);
  const listing = vi
    .spyOn(shelf.logbooks, "toArray")
    .mockRejectedValue(new LedgerFault("failed", "Not read."));
  const ordered = vi.spyOn(shelf.logbooks, "orderBy").mockImplementation(() => {
    throw new LedgerFault("failed", "Not read.");
  });
  await remove(entry);
  listing.mockRestore();
  ordered.mockRestore();
  expect(said()).toMatchObject([{ kind: "fault", text: expect.stringContaining("Not read.") }]);
  expect(await names()).toEqual([entry.name, others[0]?.name].sort());
  await act(async () => press("Try again"));
  await waitFor(async () => expect(await names()).toEqual([others[0]?.name]));
});

it("entries dated ahead are put right, and how many is said", async () => {
  const page = await hooksAt(anEvening);
  const { book, clock } = page;
  const at = clock.now();
  clock.pass(3 * 86_400_000);
  await editLap(book, { ...lap, patch: { ms: 83_000 } });
  clock.set(at);
  await putDatesRight(page.page);
  expect(said()).toEqual([{ kind: "done", text: "One entry is dated right now." }]);
  await putDatesRight(page.page);
  expect(said()).toEqual([{ kind: "done", text: "0 entries are dated right now." }]);
  const days: unknown[] = [];
  const sendOut = (async (_: string, errand: string, details: unknown) => {
    days.push([errand, details]);
    return 7;
  }) as unknown as SendOut;
  clock.set(Date.parse("2026-11-25T23:30:00Z"));
  await putDatesRight({ ...page.page, sendOut });
  expect(days).toEqual([["putDatesRight", { today: "2026-11-26" }]]);
  expect(said()).toEqual([{ kind: "done", text: "7 entries are dated right now." }]);
  const fails = (error: unknown) =>
    putDatesRight({ ...page.page, sendOut: (async () => Promise.reject(error)) as unknown as SendOut });
  await fails(new LedgerFault("failed", "Not done."));
  expect(said().at(-1)).toEqual({ kind: "fault", text: "Not done." });
  await expect(fails(new TypeError("a slip"))).rejects.toThrow("a slip");
});
