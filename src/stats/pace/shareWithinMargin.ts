import { type Numbers, requireFinite } from "#numbers";
import { type Share, wilsonInterval } from "../sample/wilsonInterval.ts";

/** How many laps lie near the best, with Wilson's interval for their share. */
export interface NearTheBest extends Share {
  readonly within: number;
  readonly laps: number;
}

/**
 * Share of laps within a margin of the best of them; the best itself counts.
 * @param values clean lap times, ms
 * @param marginPercent margin in percent of the best, from 0
 * @param confidence fraction, as 0.9
 * @returns undefined for no laps
 * @throws RangeError for a value that is not finite, a margin under 0, or a confidence outside 0 to 1
 * @example shareWithinMargin([80000, 80300, 81000], 0.5, 0.9)?.within // 2
 */
export function shareWithinMargin(
  values: Numbers,
  marginPercent: number,
  confidence: number,
): NearTheBest | undefined {
  if (!(marginPercent >= 0)) throw new RangeError(`marginPercent is ${marginPercent}: 0 or more is needed`);
  requireFinite(values);
  const laps = values.length;
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < laps; i++) best = Math.min(best, values[i] as number);
  const limit = best + (best * marginPercent) / 100;
  let within = 0;
  for (let i = 0; i < laps; i++) if ((values[i] as number) <= limit) within++;
  const share = wilsonInterval(within, laps, confidence);
  return share === undefined ? undefined : { ...share, within, laps };
}
