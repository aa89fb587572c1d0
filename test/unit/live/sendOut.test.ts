import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { sendToWorker } from "#live";
import { type StandInWorker, standInWorkers } from "../../support/standInWorker.ts";

let workers: readonly StandInWorker[] = [];
const looks: AbortController[] = [];
beforeEach(() => {
  workers = standInWorkers();
});
afterEach(() => {
  for (const look of looks.splice(0)) look.abort();
  vi.unstubAllGlobals();
});

const backup = { title: "Evenings", isSmall: true };
const answer = (worker: StandInWorker | undefined, number: number, result: unknown) =>
  worker?.say({ number, kind: "result", result });

/** Looks at a file; the worker that did it is held as long as the look is not over. */
async function look(source: Blob, at = workers.length) {
  const stop = new AbortController();
  looks.push(stop);
  const looked = sendToWorker("book", "look", { source }, { signal: stop.signal });
  answer(workers[at], 1, { ok: true });
  await looked;
  return { stop, worker: workers[at] };
}

const merge = (source: Blob) =>
  sendToWorker("book", "merge", { source, from: "PC", title: "Evenings", isDateConfirmed: false });

test("each errand has a worker of its own, which is ended once it has answered", async () => {
  const sent = [sendToWorker("book", "backup", backup), sendToWorker("book", "afterSession", null)];
  expect(workers.map(({ options }) => options?.name)).toEqual(["errand", "errand"]);
  expect(workers[0]?.sent).toEqual([
    { number: 1, kind: "errand", logbook: "book", name: "backup", details: backup },
  ]);
  answer(workers[0], 1, "bytes");
  expect(await sent[0]).toBe("bytes");
  expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, false]);
  workers[1]?.say({ number: 1, kind: "fault", text: "No space.", code: "quota" });
  await expect(sent[1]).rejects.toMatchObject({ code: "quota", message: "No space." });
  expect(workers[1]?.isEnded).toBe(true);
});

test("how far an errand is is told, and it can be stopped", async () => {
  const [onProgress, stop] = [vi.fn(), new AbortController()];
  const sent = sendToWorker("book", "backup", backup, { onProgress, signal: stop.signal });
  workers[0]?.say({ number: 1, kind: "progress", progress: { step: "Writing the file" } });
  stop.abort();
  expect(workers[0]?.sent.at(-1)).toEqual({ number: 1, kind: "stop" });
  workers[0]?.say({ number: 1, kind: "fault", text: "Stopped; nothing was changed.", code: "cancelled" });
  await expect(sent).rejects.toMatchObject({ code: "cancelled" });
  expect(onProgress).toHaveBeenCalledWith({ step: "Writing the file" });
});

test("an errand whose worker fails says that nothing was changed, and why", async () => {
  const sent = sendToWorker("book", "backup", backup);
  workers[0]?.fail("out of memory");
  await expect(sent).rejects.toMatchObject({
    code: "failed",
    message: "Not done: out of memory. Nothing was changed; reload and try again.",
  });
});

test("the worker that looked at a file does what is done with that file, and is then ended", async () => {
  const source = new Blob(["rows"]);
  const { worker } = await look(source);
  expect(worker?.isEnded).toBe(false);
  const merged = merge(source);
  expect(workers).toHaveLength(1);
  expect(worker?.sent.at(-1)).toMatchObject({ number: 2, name: "merge" });
  answer(worker, 2, "merged");
  expect(await merged).toBe("merged");
  expect(worker?.isEnded).toBe(true);
  void merge(source).catch(() => undefined);
  expect(workers).toHaveLength(2);
});

test("only a look is waited with: whatever else is done with a file ends its worker, watched or not", async () => {
  const source = new Blob(["rows"]);
  const { signal } = new AbortController();
  const details = { source, from: "PC", title: "Evenings", isDateConfirmed: false };
  const merged = sendToWorker("book", "merge", details, { signal });
  answer(workers[0], 1, "merged");
  await merged;
  const kept = sendToWorker("book", "keep", { title: "Evenings", why: "merge" }, { signal });
  answer(workers[1], 1, "kept");
  await kept;
  expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, true]);
});

test("another file, even one of the same bytes, is not that file, and neither is none", async () => {
  const { worker } = await look(new Blob(["rows"]));
  void merge(new Blob(["rows"])).catch(() => undefined);
  void sendToWorker("book", "backup", backup).catch(() => undefined);
  void sendToWorker("book", "afterSession", null).catch(() => undefined);
  expect(workers).toHaveLength(4);
  expect(worker?.sent).toHaveLength(1);
  expect(worker?.isEnded).toBe(false);
});

test("when the look at a file is over its worker is ended, and what is done with the file after that has a new one", async () => {
  const source = new Blob(["rows"]);
  const { worker, stop } = await look(source);
  stop.abort();
  expect(worker?.isEnded).toBe(true);
  void merge(source).catch(() => undefined);
  expect(workers).toHaveLength(2);
});

test("only the worker of the last look is held", async () => {
  const [one, two] = [new Blob(["one"]), new Blob(["two"])];
  const first = await look(one);
  const second = await look(two);
  expect([first.worker?.isEnded, second.worker?.isEnded]).toEqual([true, false]);
  // The first look is over later, which is nothing to the second.
  first.stop.abort();
  expect(second.worker?.isEnded).toBe(false);
  void merge(two).catch(() => undefined);
  expect(workers).toHaveLength(2);
});

test("a worker at work on its file is not ended when the look is over", async () => {
  const source = new Blob(["rows"]);
  const { worker, stop } = await look(source);
  const merged = merge(source);
  stop.abort();
  expect(worker?.isEnded).toBe(false);
  answer(worker, 2, "merged");
  expect(await merged).toBe("merged");
});

test("a look that nobody can end, that was stopped, or whose worker failed holds no worker", async () => {
  const source = new Blob(["rows"]);
  const endless = sendToWorker("book", "look", { source });
  answer(workers[0], 1, { ok: true });
  await endless;
  const stop = new AbortController();
  const stopped = sendToWorker("book", "look", { source }, { signal: stop.signal });
  stop.abort();
  workers[1]?.say({ number: 1, kind: "fault", text: "Stopped; nothing was changed.", code: "cancelled" });
  await expect(stopped).rejects.toMatchObject({ code: "cancelled" });
  const failing = sendToWorker("book", "look", { source }, { signal: new AbortController().signal });
  workers[2]?.fail("gone");
  await expect(failing).rejects.toMatchObject({ code: "failed" });
  expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, true, true]);
  void merge(source).catch(() => undefined);
  expect(workers).toHaveLength(4);
});
