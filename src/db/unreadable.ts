import type { AsideRow, Id } from "#domain";

/** A row the browser holds and cannot read, or one that holds something that cannot be right. */
export interface UnreadableRow {
  readonly table: string;
  readonly id: Id;
  /** Present where it could be read: the row as it goes aside. */
  readonly aside?: AsideRow;
  /** Then its key as the browser holds it; that of the run for a lap. */
  readonly key?: unknown;
}

/** The rows found to be unreadable since the logbook was opened, in the shape of React's external stores. */
export interface UnreadableSource {
  /** The same list until there are more. */
  readonly get: () => readonly UnreadableRow[];
  /** Notes rows, also those that another thread found. */
  readonly note: (rows: readonly UnreadableRow[]) => void;
  /** Strikes out rows that have been dealt with. */
  readonly forget: (rows: readonly UnreadableRow[]) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

const keyOf = ({ table, id, aside }: UnreadableRow) => `${table} ${id} ${aside?.id}`;

/** A list without any row yet. */
export function makeUnreadable(): UnreadableSource {
  let rows: readonly UnreadableRow[] = [];
  const known = new Set<string>();
  const listeners = new Set<() => void>();
  const tell = () => {
    for (const listener of listeners) listener();
  };
  return {
    get: () => rows,
    note: (found) => {
      const fresh = found.filter((row) => !known.has(keyOf(row)));
      if (fresh.length === 0) return;
      for (const row of fresh) known.add(keyOf(row));
      rows = [...rows, ...fresh];
      tell();
    },
    forget: (done) => {
      const gone = new Set(done.map(keyOf).filter((key) => known.delete(key)));
      if (gone.size === 0) return;
      rows = rows.filter((row) => !gone.has(keyOf(row)));
      tell();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
