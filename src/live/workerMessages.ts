import type { FaultCode, UnreadableRow } from "#db";
import type { Progress } from "./errands/errand.ts";
import type { ErrandName } from "./errands/errands.ts";
import type { JobName } from "./jobs/jobs.ts";

/** What goes to the worker of figures. */
export interface Question {
  readonly number: number;
  readonly logbook: string;
  readonly job: JobName;
  readonly details: unknown;
}
/** What comes back from it. */
export type Answer = {
  readonly number: number;
  /** Rows the worker has read around since it opened the logbook. */
  readonly unreadable: readonly UnreadableRow[];
} & ({ readonly result: unknown } | { readonly fault: string });

/** What goes to the worker of an errand: the errand, or word that it shall stop. */
export type ErrandMessage =
  | { readonly logbook: string; readonly errand: ErrandName; readonly details: unknown }
  | "stop";
/** What comes back from it. */
export type ErrandReport =
  | { readonly progress: Progress }
  | { readonly result: unknown }
  | { readonly fault: string; readonly code: FaultCode };
