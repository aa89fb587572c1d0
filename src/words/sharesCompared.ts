import type { Share } from "#stats";

/**
 * A share now beside the same before. Where their 90 % intervals meet, nothing is claimed.
 * @param more what a larger share is called, and a smaller one
 * @example "before 90 %, between 83 and 94 %; the difference may be chance"
 */
export function sayShareBefore(
  now: Share | undefined,
  before: Share | undefined,
  more: readonly [string, string],
): string {
  if (now === undefined || before === undefined) return "nothing before to compare with";
  const was = `before ${Math.round(before.share * 100)} %, between ${Math.floor(before.low * 100)} and ${Math.ceil(before.high * 100)} %`;
  if (now.share === before.share) return `${was}; no difference`;
  if (now.low > before.high) return `${more[0]}: ${was}`;
  if (now.high < before.low) return `${more[1]}: ${was}`;
  return `${was}; the difference may be chance`;
}
