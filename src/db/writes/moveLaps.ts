import { type Id, type Lap, lapsInOrder, type Run, type Session } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { addRunAfter, type RunSettings } from "./newRun.ts";
import { sessionLike } from "./sessionLike.ts";
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
  return write(book, "Laps not moved", (writer) => movedLaps(writer, move));
}

/** Moves laps to another combo: into a new run of that combo's session of the same date, made where there is none. */
export function moveLapsToCombo(
  book: Logbook,
  { comboId, ...move }: Omit<LapMove, "to"> & { readonly comboId: Id },
): Promise<Change & { readonly runId: Id; readonly sessionId: Id }> {
  return write(book, "Laps not moved", async (writer) => {
    await writer.get("combos", comboId);
    const run = await writer.get("runs", move.from);
    const from = await writer.get("sessions", run.sessionId);
    const { startedAt } = run;
    const endedAt = run.endedAt ?? Math.max(writer.now, startedAt);
    const { id: newRunIn } = await sessionLike(writer, from, { comboId, startedAt, endedAt });
    return { ...(await movedLaps(writer, { ...move, to: { newRunIn } })), sessionId: newRunIn };
  });
}

export async function movedLaps(writer: Writer, move: LapMove): Promise<Change & { readonly runId: Id }> {
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
}

async function targetOf(writer: Writer, { to }: LapMove, from: Run): Promise<Run> {
  if ("runId" in to) return writer.get("runs", to.runId);
  const session = await writer.get("sessions", to.newRunIn);
  const { guest, kind, effort } = from;
  return addRunAfter(writer, session, from, {
    kind,
    effort,
    ...(!isNext(from, session) && { line: undefined }),
    ...(guest !== undefined && { guest }),
    ...(await timesOf(writer, from, session)),
  });
}

/** Whether laps that leave a run for a new one begin the next one of the session: only then does that drive the plan's next line. */
const isNext = (from: Run, session: Session) => session.id === from.sessionId && from.endedAt === undefined;

/** Laps that move are over: only from the run being driven do they begin the next one of the same session. */
async function timesOf(writer: Writer, from: Run, session: Session): Promise<RunSettings> {
  const isSame = session.id === from.sessionId;
  if (isNext(from, session)) return {};
  const { date } = await writer.get("sessions", from.sessionId);
  const isSameDay = isSame || session.date === date;
  if (!isSameDay) return { startedAt: session.startedAt, endedAt: session.startedAt };
  const { startedAt, endedAt = Math.max(writer.now, startedAt) } = from;
  return { startedAt, endedAt };
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
