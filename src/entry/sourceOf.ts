import type { Entry } from "./context.ts";

/**
 * How a typed lap was come by: typed. Fewer decimals than the simulator shows say how well it is known and not from where;
 * from memory it is only where the driver says so, as the ledger may have said of a copied row.
 */
export function sourceOf({ isFromMemory = false }: Pick<Entry, "isFromMemory">): "typed" | "memory" {
  return isFromMemory ? "memory" : "typed";
}
