import { remarkInWords } from "./remarks.ts";
import type { Lap } from "./rows.ts";
import { decimalsOf, formatLapTime, shownPart } from "./time.ts";

/** What the ledger says of a lap beside its remarks; a row copied from it is read back by the same words. */
export const lapSigns = {
  pb: "PB",
  wasPb: "was PB",
  notBest: "not a PB",
  fromMemory: "from memory",
  wholeSeconds: "in whole seconds",
  tenths: "in tenths",
  hundredths: "in hundredths",
} as const;

/** What is said of a time known to so few decimals, where the simulator shows more. */
const signsOfDecimals = [lapSigns.wholeSeconds, lapSigns.tenths, lapSigns.hundredths] as const;

/**
 * "in tenths": how a time is known that has fewer decimals than the simulator shows; undefined for any other.
 * @param displayDecimals decimals of the simulator's display, 1 to 3
 */
export function sayFewDecimals(
  { ms, decimals }: Partial<Pick<Lap, "ms" | "decimals">>,
  displayDecimals: number,
): string | undefined {
  if (ms === undefined || decimals === undefined || decimals >= displayDecimals) return undefined;
  return signsOfDecimals[decimals];
}

/** Stands before the time that a lap counts as, where it is not all shown. */
export const countedAs = "counted as";

/** Between what is said of a lap. */
export const betweenSigns = " · ";

/**
 * "counted as 1:23.42": what a lap counts as that was worked out, where its known decimals do not show all of it. A sum of
 * sectors or a relative lap is such. Undefined for any other lap.
 */
export function sayCountedAs({ ms, decimals }: Partial<Pick<Lap, "ms" | "decimals">>): string | undefined {
  if (ms === undefined || decimals === undefined || shownPart(ms, decimals) === ms) return undefined;
  return `${countedAs} ${formatLapTime(ms, decimalsOf(ms))}`;
}

/**
 * All that is said of a lap but whether it is the PB: "counted as 1:23.42 · not a PB · off, corner 5 · in tenths". Empty
 * where there is nothing to say. A lap that the driver says is from memory says that, and no decimals.
 * @param displayDecimals decimals of the simulator's display, 1 to 3
 */
export function signsOf(
  lap: Pick<Lap, "remarks" | "source"> & Pick<Partial<Lap>, "isNotBest" | "ms" | "decimals">,
  displayDecimals: number,
): string {
  const { isNotBest, remarks, source } = lap;
  return [
    sayCountedAs(lap),
    isNotBest && lapSigns.notBest,
    remarks.map(remarkInWords).join(", "),
    source === "memory" ? lapSigns.fromMemory : sayFewDecimals(lap, displayDecimals),
  ]
    .filter(Boolean)
    .join(betweenSigns);
}
