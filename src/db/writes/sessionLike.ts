import type { Id, Session } from "#domain";
import { sessionsOf } from "./rowsOf.ts";
import type { Writer } from "./writer.ts";

/** How a session that has to be made begins and ends. */
export interface LikeSession {
  readonly comboId: Id;
  readonly startedAt: number;
  /** Undefined leaves it open. */
  readonly endedAt: number | undefined;
}

/** A combo's session of the same date as another one, or a new one made for it. */
export async function sessionLike(writer: Writer, from: Session, made: LikeSession): Promise<Session> {
  const { comboId, startedAt, endedAt } = made;
  const known = (await sessionsOf(writer, comboId)).find(
    ({ id, date, deletedAt }) => id !== from.id && date === from.date && deletedAt === undefined,
  );
  if (known) return known;
  const { isTimeOfDayKnown, date, zone, focus } = from;
  const fields = { comboId, startedAt, isTimeOfDayKnown, date, zone, focus, note: "" };
  return writer.addPart(from, endedAt === undefined ? fields : { ...fields, endedAt });
}
