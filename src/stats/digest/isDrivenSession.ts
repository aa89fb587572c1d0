import type { SessionDigest } from "./sessionDigest.ts";

/**
 * Whether a session counts as one: the driver drove a lap in it. One that was emptied, or in which only guests drove, is no
 * session in any figure, on no day driven, and ends no break; lists show it, so that it can be put right.
 */
export function isDrivenSession({ counts }: Pick<SessionDigest, "counts">): boolean {
  return counts.driven > 0;
}
