import type { Figure } from "#domain";
import type { GainRange } from "#physics";
import { sayGain } from "#words";
import type { GainValues, GainWay } from "./gainSum.ts";

/** Name and note of a record that a gain worked out begins: what it was worked out from. */
export function sayGainRecord(
  way: GainWay,
  { gain, peak, reserve, share, wanted }: GainValues,
  found: Figure<GainRange> | undefined,
): { readonly name: string; readonly note: string } {
  if (found?.known !== true) return { name: "", note: "" };
  const seen =
    way === "peak"
      ? `strongest force ${peak} % of the limit, ${reserve} % kept free`
      : `at the limit for ${share} % of the time, wanted ${wanted} %`;
  return { name: "Gain worked out", note: `At ${gain} %: ${seen}. Worked out: ${sayGain(found.value)}.` };
}
