import type { Entry } from "./context.ts";

/**
 * How a typed lap was come by. A time in fewer decimals than the simulator shows was kept in mind; a difference or a
 * sum of sectors was worked out from what was typed, and its decimals say how well it is known. Of a copied row the
 * ledger has said it.
 */
export function sourceOf({ lap, form, isFromMemory }: Entry, displayDecimals: number): "typed" | "memory" {
  if (isFromMemory !== undefined) return isFromMemory ? "memory" : "typed";
  if (lap.decimals === undefined || form === "relative" || form === "sectors") return "typed";
  return lap.decimals < displayDecimals ? "memory" : "typed";
}
