import type { Remark } from "#domain";
import { type ComboTruth, mishaps } from "./combos.ts";
import { type Chance, evenly } from "./drivers.ts";

/** What happened on a lap besides driving: what it cost, what is written beside it, whether the time was lost. */
export interface Mishap {
  readonly ms: number;
  readonly remarks: readonly Remark[];
  readonly isWithoutTime: boolean;
}

const nothing: Mishap = { ms: 0, remarks: [], isWithoutTime: false };

/** Draws what happens on one lap: mostly nothing. */
export function drawMishap({ trouble }: ComboTruth, chance: Chance): Mishap {
  let left = chance();
  for (const { kind, chance: share, costs } of mishaps) {
    left -= share;
    if (left >= 0) continue;
    const ms = Math.round(evenly(chance, ...costs));
    const corner = drawCorner(trouble, chance);
    if (kind === "wall") return { ms, remarks: [{ kind: "contact", corner }], isWithoutTime: true };
    const isSomewhere = kind === "traffic" || kind === "slow";
    return { ms, remarks: [isSomewhere ? { kind } : { kind, corner }], isWithoutTime: false };
  }
  return nothing;
}

function drawCorner(trouble: ComboTruth["trouble"], chance: Chance): number {
  const corners = Object.entries(trouble);
  let left = chance() * corners.reduce((sum, [, weight]) => sum + weight, 0);
  const found = corners.find(([, weight]) => {
    left -= weight;
    return left < 0;
  });
  return Number((found ?? corners[0])?.[0]);
}
