import type { ReadOnlyLogbook } from "#db";
import { type JobArguments, type JobName, type JobResult, runJob } from "./jobs/jobs.ts";
import type { Answer, Question } from "./workerMessages.ts";

/** Puts a job to whoever computes it: the worker in the app, the spot itself in tests. */
export type Ask = <J extends JobName>(
  book: ReadOnlyLogbook,
  job: J,
  details: JobArguments<J>,
) => Promise<JobResult<J>>;

/** Computes on the spot: for tests, and for browsers without workers. */
export const askHere: Ask = (book, job, details) => runJob(book, job, details);

interface Waiting {
  readonly book: ReadOnlyLogbook;
  readonly resolve: (result: unknown) => void;
  readonly reject: (fault: Error) => void;
}

const patience = 30_000;

/** Computes in a worker of its own, started at the first question. A worker that fails or hangs is replaced. */
export function makeWorkerAsk(): Ask {
  let worker: Worker | undefined;
  let lastNumber = 0;
  const waiting = new Map<number, Waiting>();

  const giveUp = (why: string) => {
    worker?.terminate();
    worker = undefined;
    for (const { reject } of waiting.values()) reject(new Error(why));
    waiting.clear();
  };
  const start = () => {
    const fresh = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    fresh.addEventListener("message", ({ data }: MessageEvent<Answer>) => {
      const asked = waiting.get(data.number);
      waiting.delete(data.number);
      asked?.book.unreadable.note(data.unreadable);
      if ("fault" in data) asked?.reject(new Error(data.fault));
      else asked?.resolve(data.result);
    });
    fresh.addEventListener("error", () =>
      giveUp("The figures could not be worked out: their worker failed."),
    );
    return fresh;
  };

  return <J extends JobName>(book: ReadOnlyLogbook, job: J, details: JobArguments<J>) =>
    new Promise<JobResult<J>>((resolve, reject) => {
      worker ??= start();
      lastNumber += 1;
      const number = lastNumber;
      const clock = setTimeout(() => giveUp("The figures could not be worked out in time."), patience);
      waiting.set(number, {
        book,
        resolve: (result) => {
          clearTimeout(clock);
          resolve(result as JobResult<J>);
        },
        reject: (fault) => {
          clearTimeout(clock);
          reject(fault);
        },
      });
      worker.postMessage({ number, logbook: book.name, job, details } satisfies Question);
    });
}
