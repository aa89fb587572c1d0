import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { ReadOnlyLogbook } from "#db";
import { makeWorkerAsk } from "#live";
import { type StandInWorker, standInWorkers } from "../../support/standInWorker.ts";

let workers: readonly StandInWorker[] = [];
beforeEach(() => {
  vi.useFakeTimers();
  workers = standInWorkers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const details = { terms: {}, most: 5 };

/** As much of a logbook as a question needs, and what it was told of rows that could not be read. */
function aBook(name = "evenings") {
  const note = vi.fn();
  return { book: { name, unreadable: { note } } as unknown as ReadOnlyLogbook, note };
}

const answer = (worker: StandInWorker | undefined, number: number, result: unknown) =>
  worker?.say({ number, kind: "result", result });

test("all questions go to one worker, which is made for the first of them", async () => {
  const ask = makeWorkerAsk();
  expect(workers).toHaveLength(0);
  const first = ask(aBook().book, "search", details);
  const second = ask(aBook("demo").book, "freshen", null);
  expect(workers).toHaveLength(1);
  expect(workers[0]?.options?.name).toBe("figures");
  expect(workers[0]?.sent).toEqual([
    { number: 1, kind: "job", logbook: "evenings", name: "search", details },
    { number: 2, kind: "job", logbook: "demo", name: "freshen", details: null },
  ]);
  answer(workers[0], 2, 12);
  answer(workers[0], 1, "found");
  expect(await Promise.all([first, second])).toEqual(["found", 12]);
});

test("rows the worker could not read are noted in the logbook that was asked about", async () => {
  const { book, note } = aBook();
  const asked = makeWorkerAsk()(book, "search", details);
  const rows = [{ table: "runs", id: "r" }];
  workers[0]?.say({ number: 1, kind: "unreadable", rows });
  answer(workers[0], 1, "found");
  await asked;
  expect(note).toHaveBeenCalledWith(rows);
});

test("what a worker was asked when it failed is put to another one, once", async () => {
  const ask = makeWorkerAsk();
  const [healed, other] = [ask(aBook().book, "search", details), ask(aBook().book, "freshen", null)];
  workers[0]?.fail("gone");
  await vi.advanceTimersByTimeAsync(0);
  expect(workers).toHaveLength(2);
  expect(workers[1]?.sent).toEqual([
    { number: 1, kind: "job", logbook: "evenings", name: "search", details },
    { number: 2, kind: "job", logbook: "evenings", name: "freshen", details: null },
  ]);
  answer(workers[1], 1, "found");
  expect(await healed).toBe("found");
  workers[1]?.fail("gone again");
  await expect(other).rejects.toMatchObject({
    code: "failed",
    message: "The figures could not be worked out: their worker failed.",
  });
  const next = ask(aBook().book, "search", details);
  expect(workers).toHaveLength(3);
  answer(workers[2], 1, "found");
  expect(await next).toBe("found");
});

test("a worker that has not answered in half a minute is ended, with all it was asked, and replaced", async () => {
  const ask = makeWorkerAsk();
  const asked = ask(aBook().book, "search", details);
  asked.catch(() => undefined);
  vi.advanceTimersByTime(1);
  const later = ask(aBook().book, "freshen", null);
  later.catch(() => undefined);
  vi.advanceTimersByTime(29_998);
  expect(workers[0]?.isEnded).toBe(false);
  vi.advanceTimersByTime(1);
  expect(workers[0]?.isEnded).toBe(true);
  await expect(asked).rejects.toThrow("The figures could not be worked out in time.");
  await expect(later).rejects.toThrow("The figures could not be worked out in time.");
  expect(workers).toHaveLength(1);
  const next = ask(aBook().book, "search", details);
  answer(workers[1], 1, "found");
  expect(await next).toBe("found");
});

test("a question that was answered, or failed, ends no worker afterwards", async () => {
  const ask = makeWorkerAsk();
  const [good, bad] = [ask(aBook().book, "search", details), ask(aBook().book, "search", details)];
  bad.catch(() => undefined);
  answer(workers[0], 1, "found");
  workers[0]?.say({ number: 2, kind: "fault", text: "gone", code: "gone" });
  await good;
  await expect(bad).rejects.toMatchObject({ code: "gone", message: "gone" });
  vi.advanceTimersByTime(120_000);
  expect(workers[0]?.isEnded).toBe(false);
});
