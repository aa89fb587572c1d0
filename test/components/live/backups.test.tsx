import { gunzipSync } from "node:zlib";
import { act, waitFor } from "@testing-library/react";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { type BackupFolder, dump, LedgerFault, startSession } from "#db";
import { type SendOut, saveBackup, saveHeldRows, sendHere, useFolder } from "#live";
import { useNotices } from "#state/notices.ts";
import { handOverBackup } from "../../../src/live/handOverBackup.ts";
import { aLappedEvening } from "../../support/aLappedEvening.ts";
import { catchDownloads } from "../../support/downloads.ts";
import { hooksAt, press, said } from "../../support/hooksAt.tsx";
import { failReadsOf } from "../../support/unreadableRows.ts";

let saved: ReturnType<typeof catchDownloads> = [];
let mend: (() => void) | undefined;
beforeEach(() => {
  saved = catchDownloads();
});
afterEach(() => {
  mend?.();
  mend = undefined;
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const failing: SendOut = async () => {
  throw new LedgerFault("failed", "Not done: the worker failed.");
};
const countsOf = (text: string) => (JSON.parse(text) as { counts: Record<string, number> }).counts;
const lastBackup = async ({ shelf, entry }: Awaited<ReturnType<typeof hooksAt>>) =>
  (await shelf.logbooks.get(entry.name))?.lastBackupAt;

it("a backup is handed to the downloads under the logbook's title and the day, and noted", async () => {
  const page = await hooksAt(aLappedEvening);
  expect(await saveBackup(page, page.entry)).toBe(true);
  expect(saved.map(({ name }) => name)).toEqual(["Lap-Ledger-My-logbook-2026-11-25.json"]);
  expect(countsOf((await saved[0]?.blob.text()) ?? "")).toMatchObject({ sessions: 1, runs: 1 });
  expect(said()).toEqual([
    {
      kind: "done",
      text: "Backup handed to this browser’s downloads as Lap-Ledger-My-logbook-2026-11-25.json.",
    },
  ]);
  expect(await lastBackup(page)).toBe(page.clock.now());
});

it("the day is that of the calendar where the driver is, just after midnight too", async () => {
  const page = await hooksAt(aLappedEvening);
  page.clock.set(Date.parse("2026-11-25T23:30:00Z"));
  await saveBackup(page, page.entry);
  expect(saved[0]?.name).toBe("Lap-Ledger-My-logbook-2026-11-26.json");
});

for (const [where, sendOut] of [
  ["off the page", undefined],
  ["on the page, where its worker fails", failing],
] as const)
  it(`a small backup made ${where} is the same file, packed`, async () => {
    const page = await hooksAt(aLappedEvening, sendOut && { sendOut });
    const { file, unreadable } = await handOverBackup(page, page.entry, true);
    expect([file, unreadable]).toEqual(["Lap-Ledger-My-logbook-2026-11-25.json.gz", []]);
    const bytes = Buffer.from((await saved[0]?.blob.arrayBuffer()) ?? new ArrayBuffer());
    expect(countsOf(gunzipSync(bytes).toString())).toMatchObject({ sessions: 1 });
    await saveBackup(page, page.entry, { isSmall: true });
    expect(saved.map(({ name }) => name)).toEqual([file, file]);
  });

it("where its worker fails, or there is none, it is written on the page", async () => {
  for (const instead of [{ sendOut: failing }, { sendOut: undefined as never }]) {
    const page = await hooksAt(aLappedEvening, instead);
    const before = saved.length;
    expect(await saveBackup(page, page.entry)).toBe(true);
    expect(countsOf((await saved[before]?.blob.text()) ?? "")).toMatchObject({ sessions: 1 });
    expect(await lastBackup(page)).toBe(page.clock.now());
  }
});

it("rows that cannot be read are named, three of them at most, and such a file is no backup to rely on", async () => {
  const page = await hooksAt(aLappedEvening);
  const { runId } = await startSession(page.book, {
    comboId: (await page.book.tables.combos.toCollection().first())?.id ?? "",
    date: "2026-11-25",
    zone: "UTC",
  });
  const ids = (await dump(page.book)).runs.map(({ id }) => id);
  expect(ids).toContain(runId);
  mend = failReadsOf([{ table: "runs", id: runId }]);
  expect(await saveBackup(page, page.entry)).toBe(true);
  expect(said()).toMatchObject([
    {
      kind: "fault",
      text: expect.stringContaining(` One row could not be read and is not in it: runs ${runId}.`),
    },
  ]);
  expect(await lastBackup(page)).toBeUndefined();
  mend();
  useNotices.setState({ list: [] });
  const { sessions, combos } = await dump(page.book);
  const bad = [
    ...ids.map((id) => ({ table: "runs", id })),
    ...sessions.map(({ id }) => ({ table: "sessions", id })),
    ...combos.map(({ id }) => ({ table: "combos", id })),
  ];
  mend = failReadsOf(bad);
  await saveBackup(page, page.entry);
  expect(said()[0]?.text).toMatch(
    / 5 rows could not be read and are not in it: \w+ [\w-]+, \w+ [\w-]+, \w+ [\w-]+ and more\.$/,
  );
});

it("a backup that fails is said with its reason, and can be tried again", async () => {
  const page = await hooksAt(aLappedEvening, { sendOut: failing });
  const gone = { name: "no-such-book", title: "Gone" };
  expect(await saveBackup(page, gone)).toBe(false);
  expect(said()).toMatchObject([{ kind: "fault", text: expect.stringMatching(/\.$/) }]);
  expect(saved).toEqual([]);
  act(() => press("Try again"));
  await waitFor(() => expect(said()).toHaveLength(2));
  useNotices.setState({ list: [] });
  let isBroken = true;
  const mended: SendOut = (...sent) =>
    isBroken ? Promise.reject(new TypeError("a slip")) : sendHere(page.surroundings)(...sent);
  expect(await saveBackup({ ...page, sendOut: mended }, page.entry, { isSmall: true })).toBe(false);
  isBroken = false;
  act(() => press("Try again"));
  await waitFor(() =>
    expect(saved.map(({ name }) => name)).toEqual(["Lap-Ledger-My-logbook-2026-11-25.json.gz"]),
  );
  // What is no fault of the book is told in its own words.
  const broken = { ...page, sendOut: async () => Promise.reject(new TypeError("a slip")) };
  expect(await saveBackup(broken, page.entry)).toBe(false);
  expect(said().at(-1)?.text).toBe("Backup not saved: TypeError: a slip");
});

it("what the tab still holds of a lost logbook is handed over as a file that is a backup", async () => {
  const { surroundings, book } = await hooksAt(aLappedEvening);
  const rows = await dump(book);
  await saveHeldRows(surroundings, rows, { title: "Evenings", schema: book.schema });
  expect(said()).toEqual([
    {
      kind: "done",
      text: "What this tab still holds was handed to this browser’s downloads as Lap-Ledger-Evenings-2026-11-25.json.",
    },
  ]);
  const text = (await saved[0]?.blob.text()) ?? "";
  expect(countsOf(text)).toMatchObject({ sessions: 1, runs: 1 });
  expect(JSON.parse(text)).toMatchObject({ title: "Evenings" });
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(() => {
    throw new LedgerFault("refused", "Downloads are not allowed.");
  });
  await saveHeldRows(surroundings, rows, { title: "Evenings", schema: book.schema });
  expect(said().at(-1)).toEqual({ kind: "fault", text: "Downloads are not allowed." });
});

/** The page with the hook of its folder, and the errands it has sent. */
async function withFolder(row?: Partial<BackupFolder>) {
  const sent: string[] = [];
  let isHeld = false;
  const sendOut = vi.fn(async (_: string, errand: string) => {
    sent.push(errand);
    if (isHeld) await new Promise(() => undefined);
    return null;
  });
  const page = await hooksAt(aLappedEvening, { sendOut: sendOut as unknown as SendOut });
  const { shelf, book } = page;
  const stored = () => shelf.folders.get(book.name);
  if (row !== undefined)
    await shelf.folders.put({
      logbook: book.name,
      tag: "k7",
      seen: {},
      handle: { name: "Old" },
      ...row,
    } as never);
  const { result } = page.draw(() => useFolder());
  expect(result.current.folder).toBeUndefined();
  await waitFor(() => expect(result.current.folder).not.toBeUndefined());
  const hold = () => {
    isHeld = true;
  };
  return { ...page, sent, stored, hold, folder: () => result.current };
}

const picks = (pick: () => Promise<unknown>) => vi.stubGlobal("showDirectoryPicker", vi.fn(pick));

it("a folder is chosen, gets a tag that tells this browser's files apart, and is backed up into at once", async () => {
  const { folder, stored, sent, book } = await withFolder();
  expect(folder().folder).toBeNull();
  picks(async () => ({ name: "Backups" }));
  await act(() => folder().choose());
  const row = await stored();
  expect(row).toEqual({ logbook: book.name, handle: { name: "Backups" }, tag: expect.any(String), seen: {} });
  expect(row?.tag).toMatch(/^[0-9a-f]{4}$/);
  expect(sent).toEqual(["afterSession"]);
  await waitFor(() => expect(folder().folder).toMatchObject({ handle: { name: "Backups" } }));
  expect(folder().isBusy).toBe(false);
  expect(said()).toEqual([]);
});

it("another folder keeps the tag and what was seen of other devices, and forgets why the old one stopped", async () => {
  const { folder, stored, book } = await withFolder({ seen: { m3: "newest" }, stopped: "it was full" });
  picks(async () => ({ name: "Backups" }));
  await act(() => folder().choose());
  expect(await stored()).toEqual({
    logbook: book.name,
    handle: { name: "Backups" },
    tag: "k7",
    seen: { m3: "newest" },
  });
});

it("a dialog that is closed changes nothing, and a browser that refuses is told of", async () => {
  const { folder, stored, sent } = await withFolder();
  picks(async () => Promise.reject(new DOMException("closed", "AbortError")));
  await act(() => folder().choose());
  expect([await stored(), sent, said()]).toEqual([undefined, [], []]);
  picks(async () => Promise.reject(Object.assign(new Error("no"), { name: "SecurityError" })));
  await act(() => folder().choose());
  expect(said()).toEqual([
    {
      kind: "fault",
      text: "The browser gave no leave to write there (SecurityError). Choose another folder.",
    },
  ]);
  picks(async () => Promise.reject("nothing"));
  await act(() => folder().choose());
  expect(said().at(-1)?.text).toContain("(nothing)");
  expect([await stored(), sent]).toEqual([undefined, []]);
});

it("leave that is given again takes the stop away and backs up", async () => {
  const { folder, stored, sent } = await withFolder({ stopped: "the browser asks again", lastFile: "older" });
  await act(() => folder().allow());
  expect(await stored()).toMatchObject({ tag: "k7", lastFile: "older" });
  expect(await stored()).not.toHaveProperty("stopped");
  expect(sent).toEqual(["afterSession"]);
  await act(async () => void (await folder().backUp()));
  expect(sent).toEqual(["afterSession", "afterSession"]);
});

for (const [answer, request, isSaid] of [
  ["that is not given", async () => "denied", false],
  ["that fails", async () => Promise.reject(new DOMException("no", "SecurityError")), true],
] as const)
  it(`leave ${answer} leaves the folder stopped`, async () => {
    const { folder, stored, sent, shelf } = await withFolder({ stopped: "it was full" });
    const row = await stored();
    // A handle of the browser's can be stored with its powers; one of a test cannot, so they are put on afterwards.
    const get = vi.spyOn(shelf.folders, "get");
    get.mockResolvedValue({ ...row, handle: { name: "Old", requestPermission: request } } as never);
    await shelf.folders.update(row?.logbook ?? "", { lastFile: "newer" });
    await waitFor(() => expect(folder().folder?.handle).toHaveProperty("requestPermission"));
    await act(() => folder().allow());
    get.mockRestore();
    expect(await stored()).toMatchObject({ stopped: "it was full" });
    expect(sent).toEqual([]);
    expect(said()).toHaveLength(isSaid ? 1 : 0);
  });

it("while it is being backed up that is shown", async () => {
  const { folder, hold } = await withFolder({});
  hold();
  act(() => void folder().backUp());
  expect(folder().isBusy).toBe(true);
});

it("where no folder was chosen there is nothing to allow", async () => {
  const { folder, sent, stored } = await withFolder();
  await act(() => folder().allow());
  expect([sent, await stored(), said()]).toEqual([[], undefined, []]);
});
