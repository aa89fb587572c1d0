import type { Lap } from "./rows.ts";
import { formatLapTime } from "./time.ts";

/**
 * The sectors of a lap, each with the decimals it is known to: "27.1", "31.420". Empty for a lap without sectors.
 * A copied row is read back by them.
 */
export function saySectors({
  sectors = [],
  sectorDecimals,
}: Pick<Lap, "sectors" | "sectorDecimals">): string[] {
  return sectors.map((ms, place) => formatLapTime(ms, sectorDecimals?.[place]));
}
