import type { ReadOnlyLogbook } from "#db";
import type { JobArguments, JobName, JobResult } from "./jobs/jobs.ts";
import { startLine, type WorkerLine } from "./workerLine.ts";

/** Puts a job to whoever computes it: the worker in the app (`makeWorkerAsk`), the spot itself in tests (`askHere`). */
export type Ask = <J extends JobName>(
  book: ReadOnlyLogbook,
  job: J,
  details: JobArguments<J>,
) => Promise<JobResult<J>>;

const patience = 30_000;

/** Computes in a worker of its own, started at the first question. A worker that fails or hangs is replaced. */
export function makeWorkerAsk(): Ask {
  let line: WorkerLine | undefined;
  const start = () => startLine("figures", () => "The figures could not be worked out: their worker failed.");

  return async <J extends JobName>(book: ReadOnlyLogbook, job: J, details: JobArguments<J>) => {
    if (line === undefined || line.isOver()) line = start();
    const asked = line;
    const clock = setTimeout(() => asked.end("The figures could not be worked out in time."), patience);
    try {
      const wanted = { kind: "job", logbook: book.name, name: job, details } as const;
      return (await asked.send(wanted, { onUnreadable: book.unreadable.note })) as JobResult<J>;
    } finally {
      clearTimeout(clock);
    }
  };
}
