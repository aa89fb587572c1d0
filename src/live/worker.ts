import { idMaker, LedgerFault, type Logbook, openLogbook } from "#db";
import type { Progress } from "./errands/errand.ts";
import type { SendOut } from "./errands/sending.ts";
import type { FromWorker, ToWorker, Wanted } from "./workerMessages.ts";

type Asked<K extends Wanted["kind"]> = { readonly number: number } & Extract<Wanted, { readonly kind: K }>;

const surroundings = { clock: Date.now, newId: idMaker(Date.now) };
const stops = new Map<number, AbortController>();
const tell = (message: FromWorker) => postMessage(message);

addEventListener("message", async ({ data }: MessageEvent<ToWorker>) => {
  const { number } = data;
  if (data.kind === "stop") return stops.get(number)?.abort();
  const stop = new AbortController();
  stops.set(number, stop);
  try {
    const result = data.kind === "job" ? await doJob(data) : await doErrand(data, stop.signal);
    tell({ number, kind: "result", result });
  } catch (error) {
    const code = error instanceof LedgerFault ? error.code : "failed";
    tell({ number, kind: "fault", text: error instanceof Error ? error.message : String(error), code });
  } finally {
    stops.delete(number);
  }
});

// An instance does either jobs or errands, so it fetches only what these need.
async function doJob({ number, logbook, name, details }: Asked<"job">): Promise<unknown> {
  const { runJob } = await import("./jobs/jobs.ts").catch(failAsAWhole);
  const book = await bookNamed(logbook);
  try {
    return await runJob(book, name, details as never);
  } finally {
    const rows = book.unreadable.get();
    if (rows.length > 0) tell({ number, kind: "unreadable", rows });
    // The page sets them aside; those that cannot be read stay named.
    book.unreadable.forget(rows.filter(({ aside }) => aside !== undefined));
  }
}

const open = new Map<string, Promise<Logbook>>();

/** One connection for each logbook asked about; one that was closed is opened again. */
async function bookNamed(name: string): Promise<Logbook> {
  const known = await open.get(name)?.catch(() => undefined);
  if (known?.status.get().kind === "ok") return known;
  const fresh = openLogbook({ name, ...surroundings, expect: "old" });
  open.set(name, fresh);
  return fresh;
}

let sendOut: SendOut | undefined;

async function doErrand(
  { number, logbook, name, details }: Asked<"errand">,
  signal: AbortSignal,
): Promise<unknown> {
  const { errandsAboutOneFile } = await import("./runErrand.ts").catch(failAsAWhole);
  // An instance is kept only for further errands about the file it was first sent with.
  sendOut ??= errandsAboutOneFile(surroundings);
  const onProgress = (progress: Progress) => tell({ number, kind: "progress", progress });
  return sendOut(logbook, name, details as never, { onProgress, signal });
}

/** Without a part of it the whole worker has failed: the page says so, ends it, and starts another one when it asks again. */
function failAsAWhole(error: unknown): Promise<never> {
  setTimeout(() => {
    throw error;
  });
  return new Promise(() => undefined);
}
