import { type FaultCode, LedgerFault } from "#db";
import type { Progress } from "./errands/errand.ts";
import type { ErrandDetails, ErrandName, ErrandResult } from "./errands/errands.ts";

/** How an errand is followed and stopped. */
export interface Follow {
  readonly onProgress?: (progress: Progress) => void;
  /** Stopping it ends in the fault `cancelled`; nothing has been changed then. */
  readonly signal?: AbortSignal;
}

/** Sends out an errand on a logbook, named by its database. Throws LedgerFault. */
export type SendOut = <E extends ErrandName>(
  logbook: string,
  errand: E,
  details: ErrandDetails<E>,
  follow?: Follow,
) => Promise<ErrandResult<E>>;

/** What goes to the worker: the errand, or word that it shall stop. */
export type ErrandMessage =
  | { readonly logbook: string; readonly errand: ErrandName; readonly details: unknown }
  | "stop";
/** What comes back. */
export type ErrandReport =
  | { readonly progress: Progress }
  | { readonly result: unknown }
  | { readonly fault: string; readonly code: FaultCode };

/** Each errand has a worker of its own, so that no figure waits behind it and its memory is given back at the end. */
export const sendToWorker: SendOut = <E extends ErrandName>(
  logbook: string,
  errand: E,
  details: ErrandDetails<E>,
  { onProgress, signal }: Follow = {},
) =>
  new Promise<ErrandResult<E>>((resolve, reject) => {
    const worker = new Worker(new URL("./errandWorker.ts", import.meta.url), { type: "module" });
    const stop = () => worker.postMessage("stop" satisfies ErrandMessage);
    const end = () => {
      worker.terminate();
      signal?.removeEventListener("abort", stop);
    };
    worker.addEventListener("message", ({ data }: MessageEvent<ErrandReport>) => {
      if ("progress" in data) return onProgress?.(data.progress);
      end();
      if ("fault" in data) return reject(new LedgerFault(data.code, data.fault));
      return resolve(data.result as ErrandResult<E>);
    });
    worker.addEventListener("error", (event) => {
      end();
      const why = event.message || "a part of the app could not be fetched";
      reject(new LedgerFault("failed", `Not done: ${why}. Nothing was changed; reload and try again.`));
    });
    signal?.addEventListener("abort", stop);
    worker.postMessage({ logbook, errand, details } satisfies ErrandMessage);
    if (signal?.aborted) stop();
  });
