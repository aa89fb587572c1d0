import type { FaultCode, UnreadableRow } from "#db";
import type { Progress } from "./errands/errand.ts";
import type { ErrandName } from "./errands/errands.ts";
import type { JobName } from "./jobs/jobs.ts";

/** What is wanted of a worker: figures, or long work on a file or the whole logbook. */
export type Wanted = { readonly logbook: string; readonly details: unknown } & (
  | { readonly kind: "job"; readonly name: JobName }
  | { readonly kind: "errand"; readonly name: ErrandName }
);

/** What goes to a worker. The number is that of the request which is answered, or stopped, by it. */
export type ToWorker = { readonly number: number } & (Wanted | { readonly kind: "stop" });

/** What comes back. A result or a fault is the last word on a request. */
export type FromWorker = { readonly number: number } & (
  | { readonly kind: "progress"; readonly progress: Progress }
  /** Rows the worker has read around since it opened the logbook. */
  | { readonly kind: "unreadable"; readonly rows: readonly UnreadableRow[] }
  | { readonly kind: "result"; readonly result: unknown }
  | { readonly kind: "fault"; readonly text: string; readonly code: FaultCode }
);
