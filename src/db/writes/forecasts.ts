import type { CalendarDate, Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import type { NewRow } from "./rowWrites.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/**
 * Keeps what is said about the chances of a combo's targets, and scores what was said once its date has passed. A forecast that
 * another tab has kept meanwhile after the same session is not kept again.
 */
export function keepForecasts(
  book: Logbook,
  {
    make,
    score,
    on,
  }: {
    readonly make: readonly NewRow<"forecasts">[];
    readonly score: readonly { readonly id: Id; readonly reached: boolean }[];
    /** The practice day. */
    readonly on: CalendarDate;
  },
): Promise<Change> {
  return write(book, "Forecasts not kept", async (writer) => {
    for (const { id, ...fields } of make) {
      const { targetId, madeAfter } = fields;
      const there: readonly NewRow<"forecasts">[] = await writer.transaction
        .table("forecasts")
        .where("targetId")
        .equals(targetId)
        .toArray();
      if (!there.some((row) => row.madeAfter === madeAfter)) await writer.add("forecasts", fields, id);
    }
    for (const { id, reached } of score) await writer.patch("forecasts", id, { reached, scoredOn: on });
    return changeOf(writer, "Forecasts kept");
  });
}
