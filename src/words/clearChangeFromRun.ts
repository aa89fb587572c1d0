import type { AgainstRun } from "#stats";
import { hundredths } from "./amount.ts";
import { pace, sayClear } from "./shift.ts";

/**
 * A clear change of the usual lap from another run.
 * @example "faster than run 1 by 0.24 s, very likely at least 0.05 s"
 */
export function clearChangeFromRun({
  n,
  ms,
  low,
  high,
}: Pick<AgainstRun, "n" | "ms" | "low" | "high">): string {
  const words = { fall: `${pace.fall} than run ${n}`, rise: `${pace.rise} than run ${n}` };
  return sayClear({ estimate: ms, low, high }, hundredths, words);
}
