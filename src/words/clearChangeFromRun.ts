import type { AgainstRun } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { pace } from "./shift.ts";

/**
 * A clear difference between the laps of two runs. Of the laps alone, and with no word of certainty: runs of one evening
 * differ by more than their laps show, so it says nothing of the driver.
 * @example "these laps were faster than run 1 by 0.24 s"
 */
export function clearChangeFromRun({ n, ms, low }: Pick<AgainstRun, "n" | "ms" | "low">): string {
  return `these laps were ${low > 0 ? pace.rise : pace.fall} than run ${n} by ${sayAmount(ms, hundredths)}`;
}
