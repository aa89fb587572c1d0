import type { Id } from "#domain";

/**
 * The row of one session in the derived table. The figures are those the maker handed in gave; they are stale when
 * `madeFrom` differs from `changedAt`, or the maker's version from `methodVersion`.
 */
export interface StoredDigest {
  readonly sessionId: Id;
  readonly comboId: Id;
  readonly startedAt: number;
  /** Moves at every change of the session, its runs or its laps; never runs back within a combo. */
  readonly changedAt: number;
  /** Start of the session while it is open; absent once it has ended. */
  readonly openSince?: number;
  /** The mark while the figures of an ended session are yet to be made from it; absent once they are. */
  readonly staleSince?: number;
  /** Latest possible value of the session's best lap, for finding a page's best without reading its sessions. */
  readonly bestKey?: number;
  /** The `changedAt` of the rows the digest was made from. */
  readonly madeFrom?: number;
  readonly methodVersion?: string;
  readonly digest?: unknown;
}
