/** A row as an older version wrote it. */
export type OldRow = Readonly<Record<string, unknown>>;

/** One step from a schema to the next. Pure: the same functions run on opening and on restoring an old backup. */
export interface Migration {
  readonly version: number;
  /** Dexie's index text of each new or changed table; null drops the table. */
  readonly indexes: Readonly<Record<string, string | null>>;
  /** For each table whose rows change: old row to new row, or undefined to drop it. */
  readonly rows: Readonly<Record<string, (row: OldRow) => OldRow | undefined>>;
}
