import type { Bend, Straight } from "#domain";

/** What follows a corner, as it is called. */
export const straightWords: Readonly<Record<Straight, string>> = {
  none: "next corner at once",
  short: "short straight",
  middling: "middling straight",
  long: "long straight",
};

/**
 * The kind of a corner and what follows it; empty where neither is known.
 * @example "slow, then a long straight"
 */
export function sayCornerKind({
  bend,
  after,
}: {
  readonly bend?: Bend | undefined;
  readonly after?: Straight | undefined;
}): string {
  return [bend, after && `then ${after === "none" ? "the" : "a"} ${straightWords[after]}`]
    .filter(Boolean)
    .join(", ");
}
