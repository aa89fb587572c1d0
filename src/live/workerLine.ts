import { LedgerFault, type UnreadableRow } from "#db";
import type { Follow } from "./errands/sending.ts";
import type { FromWorker, ToWorker, Wanted } from "./workerMessages.ts";

/** How one request is followed and stopped. */
export interface Following extends Follow {
  readonly onUnreadable?: (rows: readonly UnreadableRow[]) => void;
}

/** A worker of its own, and what is asked of it. */
export interface WorkerLine {
  /** Gives what the worker answers. Throws LedgerFault. */
  readonly send: (wanted: Wanted, following?: Following) => Promise<unknown>;
  /** Ends the worker; what it has not answered fails with these words. */
  readonly end: (why?: string) => void;
  /** Whether it has ended, or has failed by itself. */
  readonly isOver: () => boolean;
}

interface Waiting extends Following {
  readonly resolve: (result: unknown) => void;
  readonly reject: (fault: LedgerFault) => void;
}

/** All instances run one script, which the bundler builds with the page: see `vite.config.ts`. */
const script = new URL("./worker.ts", import.meta.url);

/**
 * Starts a worker.
 * @param name what it is for, as browsers show it
 * @param sayFailed what is said of every request not answered yet when the worker fails
 */
export function startLine(name: "figures" | "errand", sayFailed: (why: string) => string): WorkerLine {
  const worker = new Worker(script, { type: "module", name });
  const waiting = new Map<number, Waiting>();
  let lastNumber = 0;
  let isOver = false;
  const post = (message: ToWorker) => worker.postMessage(message);

  const end = (why = "Stopped.") => {
    isOver = true;
    worker.terminate();
    for (const { reject } of waiting.values()) reject(new LedgerFault("failed", why));
    waiting.clear();
  };
  worker.onerror = ({ message }) => end(sayFailed(message || "a part of the app could not be fetched"));
  worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
    const asked = waiting.get(data.number);
    if (data.kind === "progress") return asked?.onProgress?.(data.progress);
    if (data.kind === "unreadable") return asked?.onUnreadable?.(data.rows);
    waiting.delete(data.number);
    if (data.kind === "fault") return asked?.reject(new LedgerFault(data.code, data.text));
    return asked?.resolve(data.result);
  };

  const send: WorkerLine["send"] = async (wanted, following = {}) => {
    lastNumber += 1;
    const number = lastNumber;
    const { signal } = following;
    const stop = () => post({ number, kind: "stop" });
    try {
      return await new Promise((resolve, reject) => {
        waiting.set(number, { ...following, resolve, reject });
        post({ number, ...wanted });
        signal?.addEventListener("abort", stop);
        if (signal?.aborted) stop();
      });
    } finally {
      signal?.removeEventListener("abort", stop);
    }
  };
  return { send, end, isOver: () => isOver };
}
