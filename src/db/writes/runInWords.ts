import { runNumber } from "#combo";
import type { Run } from "#domain";
import { liveRunsOf } from "./rowsOf.ts";
import type { Writer } from "./writer.ts";

/** "Run 2", as the session's page calls it. */
export async function runInWords(writer: Writer, run: Run): Promise<string> {
  return `Run ${runNumber(run, await liveRunsOf(writer, run.sessionId))}`;
}
