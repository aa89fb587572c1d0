import type { CalendarDate, Forecast, Id } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import type { NewRow } from "./rowWrites.ts";
import { write } from "./write.ts";
import { changeOf } from "./writer.ts";

/**
 * Keeps what is said about the chances of a combo's targets, and scores what was said once its date has passed. A forecast that
 * another tab has kept meanwhile after the same session is not kept again, and none of a target that is gone.
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
      const target = await writer.find("targets", targetId);
      if (target === undefined || target.deletedAt !== undefined) continue;
      const there: readonly Forecast[] = await writer.transaction
        .table("forecasts")
        .where("targetId")
        .equals(targetId)
        .toArray();
      if (!there.some((row) => row.madeAfter === madeAfter)) await writer.add("forecasts", fields, id);
    }
    for (const { id, reached } of score) {
      const forecast = await writer.find("forecasts", id);
      if (forecast === undefined || forecast.deletedAt !== undefined || forecast.reached === reached)
        continue;
      await writer.patch("forecasts", id, { reached, scoredOn: on });
    }
    return changeOf(writer, "Forecasts kept");
  });
}
