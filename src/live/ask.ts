import type { ReadOnlyLogbook } from "#db";
import type { JobArguments, JobName, JobResult } from "./jobs/jobs.ts";
import { startLine, type WorkerLine } from "./workerLine.ts";
import type { Wanted } from "./workerMessages.ts";

/** Puts a job to whoever computes it: the worker in the app (`makeWorkerAsk`), the spot itself in tests (`askHere`). */
export type Ask = <J extends JobName>(
  book: ReadOnlyLogbook,
  job: J,
  details: JobArguments<J>,
) => Promise<JobResult<J>>;

const patience = 30_000;

/**
 * Computes in a worker of its own, started at the first question. A worker that fails or hangs is replaced. What one
 * that failed had been asked is asked once more: it may be that a part of its script did not come through.
 */
export function makeWorkerAsk(): Ask {
  let line: WorkerLine | undefined;
  const hung = new WeakSet<WorkerLine>();
  const start = () => startLine("figures", () => "The figures could not be worked out: their worker failed.");

  const ask = async (book: ReadOnlyLogbook, wanted: Wanted, isSecond: boolean): Promise<unknown> => {
    if (line === undefined || line.isOver()) line = start();
    const asked = line;
    const clock = setTimeout(() => {
      hung.add(asked);
      asked.end("The figures could not be worked out in time.");
    }, patience);
    try {
      return await asked.send(wanted, { onUnreadable: book.unreadable.note });
    } catch (fault) {
      if (isSecond || !asked.isOver() || hung.has(asked)) throw fault;
      return await ask(book, wanted, true);
    } finally {
      clearTimeout(clock);
    }
  };
  return async <J extends JobName>(book: ReadOnlyLogbook, job: J, details: JobArguments<J>) =>
    (await ask(book, { kind: "job", logbook: book.name, name: job, details }, false)) as JobResult<J>;
}
