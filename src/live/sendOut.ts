import type { ErrandDetails, ErrandName, ErrandResult } from "./errands/errands.ts";
import type { Follow, SendOut } from "./errands/sending.ts";
import { startLine, type WorkerLine } from "./workerLine.ts";

/** A worker that looked at a file and still holds what it read, until the driver has decided about the file. */
let holder: { readonly line: WorkerLine; readonly source: Blob } | undefined;

/**
 * Each errand has a worker of its own, so that no figure waits behind it and its memory is given back at the end. Only
 * one that looked at a file is kept, for the errand that does something with that file, until the look is aborted.
 */
export const sendToWorker: SendOut = async <E extends ErrandName>(
  logbook: string,
  errand: E,
  details: ErrandDetails<E>,
  follow: Follow = {},
) => {
  const source = details !== null && "source" in details ? details.source : undefined;
  const line = heldFor(source) ?? startLine("errand", sayFailed);
  try {
    return (await line.send({ kind: "errand", logbook, name: errand, details }, follow)) as ErrandResult<E>;
  } finally {
    const { signal } = follow;
    if (errand === "look" && source !== undefined && signal?.aborted === false && !line.isOver())
      hold({ line, source }, signal);
    else line.end();
  }
};

const sayFailed = (why: string) => `Not done: ${why}. Nothing was changed; reload and try again.`;

/** The worker that holds this very file; it is the asker's from now on. */
function heldFor(source: Blob | undefined): WorkerLine | undefined {
  if (source === undefined || holder?.source !== source) return undefined;
  const { line } = holder;
  holder = undefined;
  return line;
}

function hold(next: NonNullable<typeof holder>, until: AbortSignal): void {
  holder?.line.end();
  holder = next;
  until.addEventListener("abort", () => {
    if (holder !== next) return;
    holder = undefined;
    next.line.end();
  });
}
