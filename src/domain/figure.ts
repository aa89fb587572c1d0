import type { Reason } from "./reason.ts";

/** A computed figure: known, with its value, or not known, with the reason as data; `words` makes the sentence. */
export type Figure<T> = { readonly known: true; readonly value: T } | Unknown;

/** A figure that cannot be given. */
export interface Unknown {
  readonly known: false;
  readonly reason: Reason;
}

/** Wraps a value as a known figure. */
export function known<T>(value: T): { readonly known: true; readonly value: T } {
  return { known: true, value };
}

/**
 * A figure that cannot be given, with why.
 * @example unknown({ needs: 5, of: "pace lap", has: 3 })
 */
export function unknown(reason: Reason): Unknown {
  return { known: false, reason };
}
