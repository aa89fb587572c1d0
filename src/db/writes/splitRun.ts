import { type Id, lapsInOrder } from "#domain";
import { LedgerFault } from "../fault.ts";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { movedLaps } from "./moveLaps.ts";
import { addNextRun } from "./nextRun.ts";
import { runInWords } from "./runInWords.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/**
 * Splits the run being driven, whose end was forgotten: it ended with the lap before the given one, and that lap begins
 * the next run, with the settings a next run has.
 */
export function splitRun(
  book: Logbook,
  { runId, lapId }: { readonly runId: Id; readonly lapId: Id },
): Promise<Change & { readonly runId: Id }> {
  return write(book, "Run not split", async (writer) => {
    const run = await writer.get("runs", runId);
    const laps = lapsInOrder(run);
    const at = laps.findIndex(({ id }) => id === lapId);
    const [before, first] = [laps[at - 1], laps[at]];
    if (before === undefined || first === undefined || run.endedAt !== undefined)
      throw new LedgerFault(
        "invalid",
        "Nothing was changed: a run is split while it is driven, at its second lap or a later one.",
      );
    const endedAt = Math.max(before.createdAt, run.startedAt);
    const startedAt = Math.max(first.createdAt - (first.ms ?? 0), endedAt);
    const next = await addNextRun(writer, await writer.get("sessions", run.sessionId), run, { startedAt });
    await writer.patch("runs", run.id, { endedAt });
    await movedLaps(writer, {
      from: run.id,
      lapIds: laps.slice(at).map(({ id }) => id),
      to: { runId: next.id },
    });
    return { ...changeOf(writer, `${await runInWords(writer, next)} begun`), runId: next.id };
  });
}
