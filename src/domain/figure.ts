/** A computed figure: known, with its value, or not known, with the reason in words ("needs 5 pace laps, has 3"). */
export type Figure<T> =
  | { readonly known: true; readonly value: T }
  | { readonly known: false; readonly reason: string };

/** Wraps a value as a known figure. */
export function known<T>(value: T): { readonly known: true; readonly value: T } {
  return { known: true, value };
}

/** A figure that cannot be given, with the reason a driver reads. */
export function unknown(reason: string): { readonly known: false; readonly reason: string } {
  return { known: false, reason };
}
