import type { Id, TableName, Tables } from "#domain";

/** One row before and after a write; `before` is absent for a new row. */
export type Edit = {
  readonly [T in TableName]: {
    readonly table: T;
    readonly id: Id;
    readonly before?: Tables[T];
    readonly after?: Tables[T];
  };
}[TableName];

/** What a write did: in words for the driver ("Lap 4 deleted"), and row by row for undo. */
export interface Change {
  readonly what: string;
  readonly edits: readonly Edit[];
  /** Fields that somebody had changed since the driver saw them, and that this write changed again. */
  readonly overwrote?: readonly string[];
}
