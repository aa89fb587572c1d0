/** fake-indexeddb's transaction, as far as a test breaks it. */
interface Breakable {
  _abort(name: string): void;
}

type Call = (this: IDBObjectStore, ...args: [unknown, IDBValidKey?]) => IDBRequest;

/**
 * Makes the n-th storing call from now on fail as a browser does: the call is made, then its transaction aborts.
 * `fired` tells whether it came to that; `mend` takes the fault out again.
 */
export function failingStore(n: number, error = "QuotaExceededError") {
  const store = IDBObjectStore.prototype as unknown as Record<"add" | "put" | "delete", Call>;
  const real = { add: store.add, put: store.put, delete: store.delete };
  let calls = 0;
  let fired = false;
  for (const name of ["add", "put", "delete"] as const)
    store[name] = function (this: IDBObjectStore, ...args) {
      const request = real[name].apply(this, args);
      calls += 1;
      if (calls === n) {
        fired = true;
        (this.transaction as unknown as Breakable)._abort(error);
      }
      return request;
    };
  return { fired: () => fired, mend: () => Object.assign(store, real) };
}
