import type { Id, RigTest } from "#domain";
import { pairOrder } from "#stats";
import type { Rigs } from "./rigs.ts";
import { instantAt } from "./season.ts";
import type { Stamp } from "./stamps.ts";

const pairs = 8;
const seed = 40;
const order = pairOrder(pairs, seed);

/** Which setting the test's n-th run (from 0) is driven with. */
export function settingOfRun(n: number): "A" | "B" {
  const first = order[Math.floor(n / 2)] ?? "A";
  const second = first === "A" ? "B" : "A";
  return n % 2 === 0 ? first : second;
}

/**
 * The planned test of the lower gain (B) against the old one (A).
 * @param runs ids of its runs in the order they were driven
 */
export function makeGainTest(
  stamp: Stamp,
  comboId: Id,
  { asItWas, lowerGain }: Rigs,
  runs: readonly Id[],
): RigTest {
  const endedAt = instantAt("2026-09-29", "21:05");
  return {
    ...stamp(instantAt("2026-09-16", "21:20"), endedAt),
    comboId,
    question: "Does a gain of 54 % instead of 72 % help in the club hatch?",
    rigA: asItWas.id,
    rigB: lowerGain.id,
    pairsPlanned: pairs,
    level: 0.1,
    seed,
    pairs: order.map((first, pair) => {
      const [one, two] = [runs[2 * pair] as Id, runs[2 * pair + 1] as Id];
      return first === "A" ? { first, runA: one, runB: two } : { first, runA: two, runB: one };
    }),
    endedAt,
  };
}
