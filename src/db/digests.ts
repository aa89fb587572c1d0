import type { Id, Run, Session } from "#domain";
import { faultOf } from "./fault.ts";
import type { Logbook, ReadOnlyLogbook } from "./logbook.ts";
import { within } from "./reads/ranges.ts";
import { runsOfSession } from "./reads/sessions.ts";
import { unreadableRuns } from "./reads/unreadable.ts";
import type { StoredDigest } from "./storedDigest.ts";

/** Sessions whose figures are made in one go, so that their laps fit into memory. */
const atOnce = 200;

/** Makes the figures of one session; a digest made by another version is stale. */
export interface DigestMaker<D> {
  readonly methodVersion: string;
  readonly make: (session: Session, runs: readonly Run[]) => D;
  /** Whether what is stored can be used; else it is made again. */
  readonly isWhole: (digest: unknown) => digest is D;
  /** Earliest possible value of any lap of the session that could be a best, ms. */
  readonly bestKeyOf: (digest: D) => number | undefined;
}

/** Figures of one session, and the mark they were made from. */
export interface SessionDigest<D> {
  readonly sessionId: Id;
  readonly startedAt: number;
  readonly changedAt: number;
  readonly digest: D;
  /** It was stale or absent, and has just been made, of all runs of the session. One without a run is not kept. */
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

async function digestFrom<D>(
  book: ReadOnlyLogbook,
  row: StoredDigest,
  maker: DigestMaker<D>,
): Promise<SessionDigest<D> | undefined> {
  const { sessionId, startedAt, changedAt, digest } = row;
  const found = { sessionId, startedAt, changedAt };
  if (row.madeFrom === changedAt && row.methodVersion === maker.methodVersion && maker.isWhole(digest))
    return { ...found, digest, isNew: false };
  const [session, runs] = await Promise.all([
    book.tables.sessions.get(sessionId),
    runsOfSession(book, sessionId),
  ]);
  if (session === undefined) return undefined;
  const isWhole = (await unreadableRuns(book, sessionId)).length === 0;
  return { ...found, digest: maker.make(session, runs), isNew: isWhole };
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
  if ("database" in book) await keepDigests(book, digests, maker);
  return digests;
}

/**
 * Figures of every session of the logbook, oldest first, in one read however many combos there are; those newly made
 * are kept as by `digestsOfCombo`.
 */
export async function digestsOfAll<D>(
  book: ReadOnlyLogbook | Logbook,
  maker: DigestMaker<D>,
): Promise<(SessionDigest<D> & { readonly comboId: Id })[]> {
  const rows = await book.digests.toArray();
  const read = await Promise.all(
    rows.map(async (row) => {
      const one = await digestFrom(book, row, maker);
      return one && { ...one, comboId: row.comboId };
    }),
  );
  const digests = read.filter((one) => one !== undefined);
  if ("database" in book) await keepDigests(book, digests, maker);
  return digests.sort((a, b) => a.startedAt - b.startedAt);
}

async function keepDigests<D>(
  book: Logbook,
  digests: readonly SessionDigest<D>[],
  { methodVersion, bestKeyOf }: DigestMaker<D>,
): Promise<void> {
  const made = new Map(digests.filter(({ isNew }) => isNew).map((one) => [one.sessionId, one]));
  if (made.size === 0 || book.status.get().kind !== "ok") return;
  try {
    await book.database.transaction("rw", "digests", async (transaction) => {
      const table = transaction.table<StoredDigest, Id>("digests");
      // Not `put`, which would wake every live query of the table.
      await table
        .where(":id")
        .anyOf([...made.keys()])
        .modify((row, place) => {
          const one = made.get(row.sessionId);
          if (one?.changedAt !== row.changedAt) return false;
          const { staleSince: _, bestKey: __, ...rest } = row;
          const bestKey = bestKeyOf(one.digest);
          const kept = { ...rest, madeFrom: one.changedAt, methodVersion, digest: one.digest };
          place.value = bestKey === undefined ? kept : { ...kept, bestKey };
          return true;
        });
    });
  } catch (error) {
    throw faultOf(error, "Figures not kept");
  }
}

/**
 * The session of a page that holds its best lap, found by an index; of the other sessions only those whose figures
 * are yet to be made are read. Stores nothing. Undefined when no session there has a best.
 * @param except a session that is not asked about: the one being driven
 */
export async function fastestSession<D>(
  book: ReadOnlyLogbook,
  { comboId, span, except }: { readonly comboId: Id; readonly span: Span; readonly except?: Id },
  maker: DigestMaker<D>,
): Promise<SessionDigest<D> | undefined> {
  const isAsked = (row: StoredDigest | undefined): row is StoredDigest =>
    row !== undefined &&
    row.comboId === comboId &&
    row.sessionId !== except &&
    row.startedAt >= span.from &&
    row.startedAt < span.to;
  const [made, stale, open] = await Promise.all([
    within(book.digests, "[comboId+bestKey]", comboId).filter(isAsked).first(),
    within(book.digests, "[comboId+staleSince]", comboId).toArray(),
    // Keys only, so that a live query does not watch the row of the session being driven.
    book.digests.orderBy("openSince").primaryKeys(),
  ]);
  const others = await book.digests.bulkGet(open.filter((id) => id !== except));
  const rows = [made, ...stale, ...others].filter(isAsked);
  const read = await Promise.all(rows.map((row) => digestFrom(book, row, maker)));
  const key = (one: SessionDigest<D>) => maker.bestKeyOf(one.digest) ?? Number.POSITIVE_INFINITY;
  return read
    .filter((one) => one !== undefined && maker.bestKeyOf(one.digest) !== undefined)
    .reduce<SessionDigest<D> | undefined>((best, one) => {
      return one !== undefined && (best === undefined || key(one) < key(best)) ? one : best;
    }, undefined);
}

/**
 * Makes and keeps the figures of some of the sessions that wait for them.
 * @returns how many were made; 0 when none waits any more
 */
export async function freshenDigests<D>(book: Logbook, maker: DigestMaker<D>): Promise<number> {
  const waiting = await book.digests.orderBy("[comboId+staleSince]").limit(atOnce).toArray();
  const read = await Promise.all(waiting.map((row) => digestFrom(book, row, maker)));
  const made = read.filter((digest) => digest?.isNew === true) as SessionDigest<D>[];
  await keepDigests(book, made, maker);
  return made.length;
}
