import type { Id } from "#domain";

/** A row the browser holds and cannot read. */
export interface UnreadableRow {
  readonly table: string;
  readonly id: Id;
}

/** The rows found to be unreadable since the logbook was opened, in the shape of React's external stores. */
export interface UnreadableSource {
  /** The same list until there are more. */
  readonly get: () => readonly UnreadableRow[];
  /** Notes rows, also those that another thread found. */
  readonly note: (rows: readonly UnreadableRow[]) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

const keyOf = ({ table, id }: UnreadableRow) => `${table} ${id}`;

/** A list without any row yet. */
export function makeUnreadable(): UnreadableSource {
  let rows: readonly UnreadableRow[] = [];
  const known = new Set<string>();
  const listeners = new Set<() => void>();
  return {
    get: () => rows,
    note: (found) => {
      const fresh = found.filter((row) => !known.has(keyOf(row)));
      if (fresh.length === 0) return;
      for (const row of fresh) known.add(keyOf(row));
      rows = [...rows, ...fresh];
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
