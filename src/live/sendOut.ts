import { LedgerFault } from "#db";
import type { ErrandDetails, ErrandName, ErrandResult } from "./errands/errands.ts";
import type { Follow, SendOut } from "./errands/sending.ts";
import type { ErrandMessage, ErrandReport } from "./workerMessages.ts";

/** A worker that looked at a file and still holds what it read, until the driver has decided about the file. */
let holder: { readonly worker: Worker; readonly source: Blob } | undefined;

/**
 * Each errand has a worker of its own, so that no figure waits behind it and its memory is given back at the end. Only
 * one that looked at a file is kept, for the errand that does something with that file, until the look is aborted.
 */
export const sendToWorker: SendOut = <E extends ErrandName>(
  logbook: string,
  errand: E,
  details: ErrandDetails<E>,
  { onProgress, signal }: Follow = {},
) =>
  new Promise<ErrandResult<E>>((resolve, reject) => {
    const source = details !== null && "source" in details ? details.source : undefined;
    const worker = heldFor(source) ?? startWorker();
    const stop = () => worker.postMessage("stop" satisfies ErrandMessage);
    const end = () => {
      signal?.removeEventListener("abort", stop);
      if (errand === "look" && source !== undefined && signal?.aborted === false)
        hold({ worker, source }, signal);
      else worker.terminate();
    };
    worker.onmessage = ({ data }: MessageEvent<ErrandReport>) => {
      if ("progress" in data) return onProgress?.(data.progress);
      end();
      if ("fault" in data) return reject(new LedgerFault(data.code, data.fault));
      return resolve(data.result as ErrandResult<E>);
    };
    worker.onerror = (event) => {
      worker.terminate();
      const why = event.message || "a part of the app could not be fetched";
      reject(new LedgerFault("failed", `Not done: ${why}. Nothing was changed; reload and try again.`));
    };
    signal?.addEventListener("abort", stop);
    worker.postMessage({ logbook, errand, details } satisfies ErrandMessage);
    if (signal?.aborted) stop();
  });

const startWorker = () => new Worker(new URL("./errandWorker.ts", import.meta.url), { type: "module" });

/** The worker that holds this very file; it is the asker's from now on. */
function heldFor(source: Blob | undefined): Worker | undefined {
  if (source === undefined || holder?.source !== source) return undefined;
  const { worker } = holder;
  holder = undefined;
  return worker;
}

function hold(next: NonNullable<typeof holder>, until: AbortSignal): void {
  holder?.worker.terminate();
  holder = next;
  until.addEventListener("abort", () => {
    if (holder !== next) return;
    holder = undefined;
    next.worker.terminate();
  });
}
