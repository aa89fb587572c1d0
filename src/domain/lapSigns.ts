import { remarkInWords } from "./remarks.ts";
import type { Lap } from "./rows.ts";

/** What the ledger says of a lap beside its remarks; a row copied from it is read back by the same words. */
export const lapSigns = {
  pb: "PB",
  wasPb: "was PB",
  notBest: "not a PB",
  fromMemory: "from memory",
} as const;

/** Between what is said of a lap. */
export const betweenSigns = " · ";

/** All that is said of a lap but whether it is the PB: "not a PB · off, corner 5 · from memory". Empty where there is nothing to say. */
export function signsOf({
  isNotBest,
  remarks,
  source,
}: Pick<Lap, "remarks" | "source"> & Pick<Partial<Lap>, "isNotBest">): string {
  return [
    isNotBest && lapSigns.notBest,
    remarks.map(remarkInWords).join(", "),
    source === "memory" && lapSigns.fromMemory,
  ]
    .filter(Boolean)
    .join(betweenSigns);
}
