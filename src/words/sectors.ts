import { type Corner, cornersOfSector, formatLapTime } from "#domain";
import type { ComboReview } from "#stats";
import { hundredths } from "./amount.ts";
import { sayCorners } from "./cornersSay.ts";
import { counted } from "./counted.ts";
import { sayLacking, sayTooFew } from "./reason.ts";

type Reviewed = Pick<ComboReview, "sectors" | "bestSectors" | "reachable">;

/**
 * In which sector most time lies between the usual and the best time.
 * @example "Sector 2 costs most: 0.56 of the 1.39 s between your usual and your best sectors"
 */
export function sectorsTitle({ sectors }: Pick<Reviewed, "sectors">): string {
  if (!sectors.known) return sayTooFew(sectors.reason);
  const { largest, gap, sectors: lines } = sectors.value;
  if (gap === 0) return "Usual and best sectors are the same";
  const most = lines[largest]?.gap ?? 0;
  return `Sector ${largest + 1} costs most: ${hundredths.digits(most)} of the ${hundredths.say(gap)} between your usual and your best sectors`;
}

/**
 * The two laps put together from sectors, and from how many laps each was picked.
 * @param corners of the layout, so that the sector's are named
 */
export function sectorsReading(
  { sectors, bestSectors, reachable }: Reviewed,
  corners: readonly Corner[] = [],
): string {
  if (!sectors.known) return "Sectors are typed after the lap's time, or instead of it.";
  const within = cornersOfSector(corners, sectors.value.largest + 1);
  return [
    within.length > 0 && `Sector ${sectors.value.largest + 1} holds ${sayCorners(within)}.`,
    `From the ${counted(sectors.value.laps, "pace lap")} with sectors in this period; those of one evening may point elsewhere.`,
    bestSectors.known &&
      `Best sectors together ${formatLapTime(bestSectors.value.ms)}, picked from ${counted(bestSectors.value.laps, "clean lap")}: a bound, not a goal.`,
    reachable.known
      ? `A lap you can repeat ${formatLapTime(reachable.value.ms)}: in each sector the time that every fourth of ${counted(reachable.value.laps, "pace lap")} beats.`
      : `For a lap you can repeat: ${sayLacking(reachable.reason)}.`,
  ]
    .filter((part) => part !== false)
    .join(" ");
}
