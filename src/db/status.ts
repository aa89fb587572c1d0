/** How it stands with an open logbook. All but `ok` mean that nothing can be written. */
export type LogbookStatus =
  | { readonly kind: "ok" }
  /** Another tab holds an older version open; opening goes on when it is closed. */
  | { readonly kind: "blocked" }
  /** Another tab brought a newer version; this one must reload. */
  | { readonly kind: "newerTab" }
  /** Last used by a newer version of the app; readable, not writable. */
  | { readonly kind: "newer" }
  /** The stored logbook has disappeared from this browser. */
  | { readonly kind: "gone" }
  /** The connection was lost and could not be had again. */
  | { readonly kind: "closed" };

/** A status to look at and to listen to, in the shape of React's external stores. */
export interface StatusSource {
  readonly get: () => LogbookStatus;
  /** Calls the listener at each change; returns the function that ends it. */
  readonly subscribe: (listener: () => void) => () => void;
}

/** A status source and the one function that changes it. */
export function makeStatus(): StatusSource & { readonly set: (kind: LogbookStatus["kind"]) => void } {
  let status: LogbookStatus = { kind: "ok" };
  const listeners = new Set<() => void>();
  return {
    get: () => status,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    set: (kind) => {
      if (kind === status.kind) return;
      status = { kind };
      for (const listener of listeners) listener();
    },
  };
}
