import { canonicalText } from "#domain";

type OptionalKeys<T> = { [K in keyof T]-?: object extends Pick<T, K> ? K : never }[keyof T];

/** Named fields to change; those left out stay. An optional field given as undefined is removed. */
export type Patch<T> = { readonly [K in OptionalKeys<T>]?: T[K] | undefined } & {
  readonly [K in Exclude<keyof T, OptionalKeys<T>>]?: T[K];
};

/** The row with the named fields changed; a new object. */
export function patched<T extends object>(row: T, patch: Patch<T>): T {
  const entries = Object.entries({ ...row, ...patch }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as T;
}

/** Whether two stored values are the same, whatever the order of their fields. */
export function isSame(a: unknown, b: unknown): boolean {
  return a === b || canonicalText(a) === canonicalText(b);
}

/** One field of a row by its name; undefined where it is absent. */
export function fieldOf(row: object, field: string): unknown {
  return (row as Readonly<Record<string, unknown>>)[field];
}

/** Names of the fields in which two rows differ. */
export function differingFields(a: object, b: object): string[] {
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].filter(
    (field) => !isSame(fieldOf(a, field), fieldOf(b, field)),
  );
}

/**
 * Patched fields that no longer hold what the driver saw: somebody changed them meanwhile.
 * @param expected the row as the driver saw it
 */
export function overwrittenFields(current: object, patch: object, expected: object | undefined): string[] {
  if (expected === undefined) return [];
  return Object.keys(patch).filter((field) => !isSame(fieldOf(current, field), fieldOf(expected, field)));
}
