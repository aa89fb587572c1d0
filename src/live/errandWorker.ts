import { idMaker, LedgerFault } from "#db";
import { type ReadSource, readSource } from "./errands/readSource.ts";
import { runErrand } from "./runErrand.ts";
import type { ErrandMessage, ErrandReport } from "./workerMessages.ts";

const stop = new AbortController();
let read: ReturnType<ReadSource> | undefined;
/** A worker is kept only for further errands about the file it was first sent with. */
const readFile: ReadSource = (source) => {
  read ??= readSource(source, Date.now());
  return read;
};
const report = (message: ErrandReport) => postMessage(message);

addEventListener("message", async ({ data }: MessageEvent<ErrandMessage>) => {
  if (data === "stop") return stop.abort();
  const { logbook, errand, details } = data;
  try {
    const result = await runErrand(
      { clock: Date.now, newId: idMaker(Date.now) },
      logbook,
      errand,
      details as never,
      { onProgress: (progress) => report({ progress }), signal: stop.signal, readFile },
    );
    report({ result });
  } catch (error) {
    const code = error instanceof LedgerFault ? error.code : "failed";
    report({ fault: error instanceof Error ? error.message : String(error), code });
  }
});
