import type { Id } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";
import { isLive, within } from "./ranges.ts";
import { runsOfSession, type SessionWithRuns } from "./sessions.ts";

/**
 * The newest session of a combo that had a plan, with its runs; undefined where none had.
 * @param until instant from which on a session is dated after tomorrow: such ones are no past
 */
export async function lastPlanned(
  book: ReadOnlyLogbook,
  comboId: Id,
  until: number,
): Promise<Pick<SessionWithRuns, "session" | "runs"> | undefined> {
  const session = await within(book.tables.sessions, "[comboId+startedAt]", comboId)
    .reverse()
    .filter((one) => isLive(one) && one.startedAt < until && (one.plan ?? []).length > 0)
    .first();
  return session && { session, runs: await runsOfSession(book, session.id) };
}
