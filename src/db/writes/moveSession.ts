import type { CalendarDate, Id, Session } from "#domain";
import type { Logbook } from "../logbook.ts";
import type { Change } from "./change.ts";
import { type AskedCombo, comboAsked, liveRows } from "./combos.ts";
import { isInUse } from "./isInUse.ts";
import { onCombo } from "./onCombo.ts";
import { liveRunsOf } from "./rowsOf.ts";
import { write } from "./write.ts";
import { changeOf, type Writer } from "./writer.ts";

export interface SessionDate {
  readonly sessionId: Id;
  readonly date: CalendarDate;
  /** Start at the new date; where the time of day is not known, noon. */
  readonly startedAt: number;
  readonly isTimeOfDayKnown: boolean;
  readonly zone?: string;
}

/**
 * Moves a session to another date or time of day; its end and its runs move by as much, and back in time also the page that
 * was turned with it: one of a clock ahead would else begin in years. Forward it stays, for the sessions it has since.
 */
export function changeSessionDate(book: Logbook, { sessionId, ...to }: SessionDate): Promise<Change> {
  return write(book, "Date not changed", async (writer) => {
    const session = await writer.get("sessions", sessionId);
    const shift = to.startedAt - session.startedAt;
    const end = session.endedAt === undefined ? {} : { endedAt: session.endedAt + shift };
    await writer.patch("sessions", sessionId, { ...to, ...end });
    for (const run of shift === 0 ? [] : await liveRunsOf(writer, sessionId)) {
      const runEnd = run.endedAt === undefined ? {} : { endedAt: run.endedAt + shift };
      await writer.patch("runs", run.id, { startedAt: run.startedAt + shift, ...runEnd });
    }
    if (shift < 0)
      for (const page of await liveRows(writer, "pages"))
        if (page.from === session.startedAt) await writer.patch("pages", page.id, { from: to.startedAt });
    return changeOf(writer, "Date of the session changed");
  });
}

/**
 * Moves a session with its runs to another combo, which is made where it is new. What was made for this session by its
 * start, and is of no use to any other, goes: a name typed wrong would stand in every list for good.
 */
export function moveSessionToCombo(
  book: Logbook,
  { sessionId, ...to }: { readonly sessionId: Id } & AskedCombo,
): Promise<Change> {
  return write(book, "Session not moved", async (writer) => {
    const comboId = await comboAsked(writer, to);
    const session = await writer.get("sessions", sessionId);
    await writer.patch("sessions", sessionId, { comboId });
    for (const run of await liveRunsOf(writer, sessionId))
      await writer.patch("runs", run.id, onCombo(run.comboId, comboId));
    await removeMadeWith(writer, session);
    return changeOf(writer, "Session moved to another combo");
  });
}

/** Removes combo, layout, track and car of a session that has left them, as far as they were made with it and for it alone. */
async function removeMadeWith(writer: Writer, { comboId, createdAt }: Session): Promise<void> {
  const removeUnused = async (table: "combos" | "layouts" | "tracks" | "cars", id: Id) => {
    const row = await writer.find(table, id);
    const isOfStart = row?.createdAt === createdAt && row.updatedAt === createdAt;
    if (!isOfStart || row.deletedAt !== undefined || (await isInUse(writer, table, id))) return;
    await writer.remove(table, id);
  };
  const combo = await writer.find("combos", comboId);
  if (combo === undefined) return;
  const layout = await writer.find("layouts", combo.layoutId);
  await removeUnused("combos", comboId);
  await removeUnused("cars", combo.carId);
  if (layout === undefined) return;
  await removeUnused("layouts", layout.id);
  await removeUnused("tracks", layout.trackId);
}
