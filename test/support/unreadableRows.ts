/** One row that a browser is to fail to read. */
export interface Unreadable {
  readonly table: string;
  readonly id: string;
}

/**
 * Makes reading of some rows fail as a browser does whose store is damaged: the request ends in an error event, whether the
 * row is asked for by itself, among many, or by a cursor that comes upon it. Keys and counts still come. Stands by
 * itself, so that it can be sent into a page or put before a worker's script. Gives the function that mends it.
 */
export function failReadsOf(rows: readonly Unreadable[]): () => void {
  const bad = new Set(rows.map(({ table, id }) => `${table} ${id}`));
  type Source = IDBObjectStore | IDBIndex;
  const storeOf = (source: Source) => ("objectStore" in source ? source.objectStore : source);
  const isBad = (store: IDBObjectStore, result: unknown): boolean => {
    if (typeof result !== "object" || result === null) return false;
    if (Array.isArray(result)) return result.some((row) => isBad(store, row));
    const key =
      "primaryKey" in result ? result.primaryKey : (result as Record<string, unknown>)[String(store.keyPath)];
    return bad.has(`${store.name} ${key}`);
  };
  const undo: (() => void)[] = [];
  for (const prototype of [IDBObjectStore.prototype, IDBIndex.prototype])
    for (const name of ["get", "getAll", "openCursor"] as const) {
      const real = prototype[name] as (...given: unknown[]) => IDBRequest;
      const wrapped = function (this: Source, ...given: unknown[]): unknown {
        const request = real.apply(this, given);
        const store = storeOf(this);
        const error = new DOMException("Internal error reading a value", "UnknownError");
        const stand: Record<string, unknown> = { error, transaction: store.transaction };
        const tell = (handler: unknown, event: unknown) => (handler as (event: unknown) => void)?.(event);
        Object.defineProperty(stand, "result", { get: () => request.result });
        request.onsuccess = () => {
          const failed = { target: stand, preventDefault: () => undefined, stopPropagation: () => undefined };
          if (isBad(store, request.result)) tell(stand["onerror"], failed);
          else tell(stand["onsuccess"], { target: stand });
        };
        request.onerror = (event) => tell(stand["onerror"], event);
        return stand;
      };
      Object.assign(prototype, { [name]: wrapped });
      undo.push(() => Object.assign(prototype, { [name]: real }));
    }
  return () => {
    for (const one of undo) one();
  };
}
