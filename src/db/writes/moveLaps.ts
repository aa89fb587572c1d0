import { type Id, type Lap, lapsInOrder, type Run } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { addRunAfter } from "./newRun.ts";
import { stampChanged } from "./stamp.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

export interface LapMove {
  readonly from: Id;
  readonly lapIds: readonly Id[];
  /** A run that is there, or a new one in a session, with the settings of the run the laps leave. */
  readonly to: { readonly runId: Id; readonly afterLapId?: Id } | { readonly newRunIn: Id };
}

/**
 * Moves laps to another run, in their order; they keep their ids. They go behind `afterLapId`, else to the end.
 * A lap belongs to one run only: the old run keeps no trace of it.
 */
export function moveLaps(book: Logbook, move: LapMove): Promise<Change & { readonly runId: Id }> {
  return write(book, "Laps not moved", async (writer) => {
    const from = await writer.get("runs", move.from);
    const laps = lapsInOrder(from).filter(({ id }) => move.lapIds.includes(id));
    const target = await targetOf(writer, move, from);
    const stay = from.laps.filter((lap) => !laps.includes(lap));
    const isSameRun = target.id === from.id;
    const there = isSameRun ? stay : target.laps;
    const after = "afterLapId" in move.to ? move.to.afterLapId : undefined;
    const places = placesAfter({ ...target, laps: there }, after, laps.length);
    const moved = laps.map((lap, index) => stampChanged<Lap>(lap, { n: places[index] ?? lap.n }, writer.now));
    if (!isSameRun) await writer.put("runs", { ...from, laps: stay });
    await writer.put("runs", { ...target, laps: [...there, ...moved] });
    const what = laps.length === 1 ? "1 lap moved" : `${laps.length} laps moved`;
    return { ...changeOf(writer, what), runId: target.id };
  });
}

async function targetOf(writer: Writer, { to }: LapMove, from: Run): Promise<Run> {
  if ("runId" in to) return writer.get("runs", to.runId);
  return addRunAfter(writer, await writer.get("sessions", to.newRunIn), from);
}

/** Places for `count` laps behind one lap of the run, before the next one; without it, behind the last. */
function placesAfter(run: Run, afterLapId: Id | undefined, count: number): number[] {
  const places = lapsInOrder(run);
  const at = places.findIndex(({ id }) => id === afterLapId);
  const last = run.laps.reduce((most, lap) => Math.max(most, lap.n), 0);
  const low = (at < 0 ? undefined : places[at]?.n) ?? last;
  const high = (at < 0 ? undefined : places[at + 1]?.n) ?? low + count + 1;
  return Array.from({ length: count }, (_, index) => low + ((high - low) * (index + 1)) / (count + 1));
}
