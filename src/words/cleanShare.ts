import type { NearTheBest, Share } from "#stats";

/**
 * Share of clean laps with its 90 % interval, the ends rounded outwards.
 * @example "78 % of timed laps clean, between 70 and 85 %"
 */
export function sayCleanShare(share: Share | undefined): string {
  if (share === undefined) return "No timed laps yet";
  return `${Math.round(share.share * 100)} % of timed laps clean, ${between(share)} %`;
}

/**
 * Laps with an own mistake, told for a hundred laps.
 * @example "12 mistakes in 100 laps, between 8 and 17"
 */
export function sayMistakeShare(share: Share | undefined): string {
  if (share === undefined) return "No laps yet";
  const mistakes = Math.round(share.share * 100);
  return `${mistakes === 1 ? "1 mistake" : `${mistakes} mistakes`} in 100 laps, ${between(share)}`;
}

/**
 * Pace laps near the best one of their own session.
 * @example "12 of 41 pace laps within 0.5 % of the best of their session"
 */
export function sayNearTheBest(near: NearTheBest | undefined, marginPercent: number): string {
  if (near === undefined) return "No session with 5 pace laps yet";
  const laps = near.laps === 1 ? "1 pace lap" : `${near.laps} pace laps`;
  return `${near.within} of ${laps} within ${marginPercent} % of the best of their session`;
}

/** The ends of a share's interval in whole percent, rounded outwards: what lies outside is ruled out. */
export function shareEnds({ low, high }: Pick<Share, "low" | "high">): readonly [low: number, high: number] {
  return [Math.floor(low * 100), Math.ceil(high * 100)];
}

function between(share: Share): string {
  return `between ${shareEnds(share).join(" and ")}`;
}
