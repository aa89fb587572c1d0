import type { Id, Run, Session } from "#domain";
import { faultOf } from "./fault.ts";
import type { Logbook, ReadOnlyLogbook } from "./logbook.ts";
import { within } from "./reads/ranges.ts";
import { runsOfSession } from "./reads/sessions.ts";
import type { StoredDigest } from "./storedDigest.ts";

/** Makes the figures of one session; a digest made by another version is stale. */
export interface DigestMaker<D> {
  readonly methodVersion: string;
  readonly make: (session: Session, runs: readonly Run[]) => D;
}

/** Figures of one session, and the mark they were made from. */
export interface SessionDigest<D> {
  readonly sessionId: Id;
  readonly startedAt: number;
  readonly changedAt: number;
  readonly digest: D;
  /** It was stale or absent, and has just been made. */
  readonly isNew: boolean;
}

/** Span of time of the sessions wanted: `from` counts, `to` does not. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * Figures of a combo's sessions, oldest first; those that are stale are made from their laps. Stores nothing, so it may
 * run inside a live query.
 * @param span sessions that began in it; without it, all
 */
export async function readDigests<D>(
  book: ReadOnlyLogbook,
  comboId: Id,
  maker: DigestMaker<D>,
  span?: Span,
): Promise<SessionDigest<D>[]> {
  const rows = await within(book.digests, "[comboId+startedAt]", comboId).toArray();
  const wanted = span ? rows.filter((row) => row.startedAt >= span.from && row.startedAt < span.to) : rows;
  const read = await Promise.all(wanted.map((row) => digestFrom(book, row, maker)));
  return read.filter((digest) => digest !== undefined);
}

/** Figures of one session; undefined when it is not there or deleted. Stores nothing. */
export async function readDigest<D>(
  book: ReadOnlyLogbook,
  sessionId: Id,
  maker: DigestMaker<D>,
): Promise<SessionDigest<D> | undefined> {
  const row = await book.digests.get(sessionId);
  return row && digestFrom(book, row, maker);
}

async function digestFrom<D>(
  book: ReadOnlyLogbook,
  row: StoredDigest,
  maker: DigestMaker<D>,
): Promise<SessionDigest<D> | undefined> {
  const { sessionId, startedAt, changedAt } = row;
  const found = { sessionId, startedAt, changedAt };
  if (row.madeFrom === changedAt && row.methodVersion === maker.methodVersion)
    return { ...found, digest: row.digest as D, isNew: false };
  const [session, runs] = await Promise.all([
    book.tables.sessions.get(sessionId),
    runsOfSession(book, sessionId),
  ]);
  return session && { ...found, digest: maker.make(session, runs), isNew: true };
}

/**
 * Figures of a combo's sessions as `readDigests` gives them; those newly made are kept where the logbook may be
 * written, each only if its session has not changed meanwhile.
 */
export async function digestsOfCombo<D>(
  book: ReadOnlyLogbook | Logbook,
  comboId: Id,
  maker: DigestMaker<D>,
  span?: Span,
): Promise<SessionDigest<D>[]> {
  const digests = await readDigests(book, comboId, maker, span);
  if ("database" in book) await keepDigests(book, digests, maker.methodVersion);
  return digests;
}

async function keepDigests<D>(
  book: Logbook,
  digests: readonly SessionDigest<D>[],
  methodVersion: string,
): Promise<void> {
  const made = digests.filter(({ isNew }) => isNew);
  if (made.length === 0 || book.status.get().kind !== "ok") return;
  try {
    await book.database.transaction("rw", "digests", async (transaction) => {
      const table = transaction.table<StoredDigest, Id>("digests");
      const now = await table.bulkGet(made.map(({ sessionId }) => sessionId));
      const kept = made.flatMap(({ changedAt, digest }, index) => {
        const row = now[index];
        return row?.changedAt === changedAt ? [{ ...row, madeFrom: changedAt, methodVersion, digest }] : [];
      });
      await table.bulkPut(kept);
    });
  } catch (error) {
    throw faultOf(error, "Figures not kept");
  }
}

/** The best of a page's sessions by the figure handed in, from digests alone; undefined when none has one. */
export async function pbOfPage<D, B extends { readonly ms: number }>(
  book: ReadOnlyLogbook,
  comboId: Id,
  span: Span,
  maker: DigestMaker<D>,
  bestOf: (digest: D) => B | undefined,
): Promise<(B & { readonly sessionId: Id }) | undefined> {
  const digests = await readDigests(book, comboId, maker, span);
  return digests.reduce<(B & { readonly sessionId: Id }) | undefined>((best, { sessionId, digest }) => {
    const own = bestOf(digest);
    return own && (best === undefined || own.ms < best.ms) ? { ...own, sessionId } : best;
  }, undefined);
}
