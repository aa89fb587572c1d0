import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { LedgerFault } from "#db";
import { startLine } from "../../../src/live/workerLine.ts";
import { type StandInWorker, standInWorkers } from "../../support/standInWorker.ts";

let workers: readonly StandInWorker[] = [];
beforeEach(() => {
  workers = standInWorkers();
});
afterEach(() => vi.unstubAllGlobals());

const job = { kind: "job", logbook: "book", name: "search", details: { terms: {}, most: 5 } } as const;

/** A line, its worker, and a question that nobody has answered yet. */
function aLine() {
  const line = startLine("figures", (why) => `Not worked out: ${why}.`);
  const [worker] = workers;
  if (worker === undefined) throw new Error("no worker was made");
  return { line, worker };
}

/** How a question ended: with what, or with which fault. */
const ended = (asked: Promise<unknown>) =>
  asked.then(
    (result) => ({ result }),
    (fault: LedgerFault) => ({
      isFault: fault instanceof LedgerFault,
      code: fault.code,
      text: fault.message,
    }),
  );

test("a worker is made of the one script, and bears the name of what it is for", () => {
  const { line, worker } = aLine();
  expect(worker.script).toMatch(/\/src\/live\/worker\.ts$/);
  expect(worker.options).toEqual({ type: "module", name: "figures" });
  expect([line.isOver(), worker.isEnded]).toEqual([false, false]);
});

test("each question gets its own answer, in whatever order they come", async () => {
  const { line, worker } = aLine();
  const asked = [line.send(job), line.send({ ...job, logbook: "other" })];
  expect(worker.sent).toEqual([
    { number: 1, ...job },
    { number: 2, ...job, logbook: "other" },
  ]);
  worker.say({ number: 2, kind: "result", result: "second" });
  worker.say({ number: 1, kind: "result", result: "first" });
  expect(await Promise.all(asked)).toEqual(["first", "second"]);
});

test("a fault comes back with its words and its code, and the worker goes on", async () => {
  const { line, worker } = aLine();
  const asked = line.send(job);
  worker.say({ number: 1, kind: "fault", text: "No space.", code: "quota" });
  expect(await ended(asked)).toEqual({ isFault: true, code: "quota", text: "No space." });
  expect([line.isOver(), worker.isEnded]).toEqual([false, false]);
  const next = line.send(job);
  worker.say({ number: 2, kind: "result", result: 7 });
  expect(await next).toBe(7);
});

test("how far it is, and rows that could not be read, are told to whoever asked, before the answer", async () => {
  const { line, worker } = aLine();
  const [onProgress, onUnreadable, onOthers] = [vi.fn(), vi.fn(), vi.fn()];
  const asked = line.send(job, { onProgress, onUnreadable });
  const other = line.send(job, { onProgress: onOthers, onUnreadable: onOthers });
  const rows = [{ table: "runs", id: "r" }];
  worker.say({ number: 1, kind: "progress", progress: { step: "Reading" } });
  worker.say({ number: 1, kind: "unreadable", rows });
  worker.say({ number: 1, kind: "result", result: "done" });
  worker.say({ number: 2, kind: "result", result: "done too" });
  expect([await asked, await other]).toEqual(["done", "done too"]);
  expect(onProgress.mock.calls).toEqual([[{ step: "Reading" }]]);
  expect(onUnreadable.mock.calls).toEqual([[rows]]);
  expect(onOthers).not.toHaveBeenCalled();
});

test("whoever does not follow how far it is misses nothing", async () => {
  const { line, worker } = aLine();
  const asked = line.send(job);
  worker.say({ number: 1, kind: "progress", progress: { step: "Reading" } });
  worker.say({ number: 1, kind: "unreadable", rows: [] });
  worker.say({ number: 1, kind: "result", result: "done" });
  expect(await asked).toBe("done");
});

test("words of the worker about a question that is over are not heard", async () => {
  const { line, worker } = aLine();
  const onProgress = vi.fn();
  const asked = line.send(job, { onProgress });
  worker.say({ number: 1, kind: "result", result: "done" });
  await asked;
  for (const late of [
    { kind: "progress", progress: { step: "Reading" } },
    { kind: "unreadable", rows: [] },
    { kind: "result", result: "again" },
    { kind: "fault", text: "late", code: "failed" },
  ])
    expect(() => worker.say({ number: 1, ...late })).not.toThrow();
  expect(onProgress).not.toHaveBeenCalled();
  expect(await asked).toBe("done");
});

test("when a worker fails, every question that waits fails in words, and the worker is over", async () => {
  const { line, worker } = aLine();
  const asked = [line.send(job), line.send(job)];
  worker.fail("out of memory");
  const fault = { isFault: true, code: "failed", text: "Not worked out: out of memory." };
  expect(await Promise.all(asked.map(ended))).toEqual([fault, fault]);
  expect([line.isOver(), worker.isEnded]).toEqual([true, true]);
});

test("a worker that fails without a word has most likely not been fetched", async () => {
  const { line, worker } = aLine();
  const asked = line.send(job);
  worker.fail("");
  expect(await ended(asked)).toMatchObject({
    text: "Not worked out: a part of the app could not be fetched.",
  });
});

test("a line that is ended fails what waits in the words given, or says that it was stopped", async () => {
  const { line, worker } = aLine();
  const asked = line.send(job);
  line.end("It took too long.");
  expect(await ended(asked)).toEqual({ isFault: true, code: "failed", text: "It took too long." });
  expect([line.isOver(), worker.isEnded]).toEqual([true, true]);
  const other = startLine("errand", String);
  const stopped = other.send(job);
  other.end();
  expect(await ended(stopped)).toMatchObject({ text: "Stopped." });
});

test("a question is stopped by its number, once, and only while it waits", async () => {
  const { line, worker } = aLine();
  const [first, second] = [new AbortController(), new AbortController()];
  const asked = [line.send(job, { signal: first.signal }), line.send(job, { signal: second.signal })];
  second.abort();
  expect(worker.sent.slice(2)).toEqual([{ number: 2, kind: "stop" }]);
  worker.say({ number: 2, kind: "fault", text: "Stopped; nothing was changed.", code: "cancelled" });
  worker.say({ number: 1, kind: "result", result: "done" });
  expect(await asked[0]).toBe("done");
  expect(await ended(asked[1] ?? Promise.reject())).toMatchObject({ code: "cancelled" });
  first.abort();
  expect(worker.sent).toHaveLength(3);
});

test("what was stopped before it was sent is sent and stopped at once", () => {
  const { line, worker } = aLine();
  void line.send(job, { signal: AbortSignal.abort() });
  expect(worker.sent).toEqual([
    { number: 1, ...job },
    { number: 1, kind: "stop" },
  ]);
});
