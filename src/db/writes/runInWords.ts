import type { Run } from "#domain";
import { liveRunsOf } from "./rowsOf.ts";
import type { Writer } from "./writer.ts";

/** "Run 2", by its place among the session's runs that are not deleted. */
export async function runInWords(writer: Writer, run: Run): Promise<string> {
  const runs = await liveRunsOf(writer, run.sessionId);
  return `Run ${runs.findIndex(({ id }) => id === run.id) + 1}`;
}
