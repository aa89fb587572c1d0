import type { Id, RigTest, RunOfTest, Stamped } from "#domain";
import { pairOrder } from "#stats";
import type { Rigs } from "./rigs.ts";
import { instantAt } from "./season.ts";
import type { Stamp } from "./stamps.ts";

const pairs = 8;
const seed = 40;
const order = pairOrder(pairs, seed);

/** Laps driven in each of its runs, of which five must be clean. */
export const lapsOfTestRun = 7;

/** The place of the test's n-th run (from 0). */
export function placeOfRun(id: Id, n: number): RunOfTest {
  const pair = Math.floor(n / 2);
  const first = order[pair] ?? "A";
  const second = first === "A" ? "B" : "A";
  return { id, pair: pair + 1, side: n % 2 === 0 ? first : second };
}

/** The stamps of the test: planned the evening before its first pair, over with the setting kept after its last. */
export function stampTest(stamp: Stamp): Stamped {
  return stamp(instantAt("2026-09-16", "21:20"), instantAt("2026-09-29", "21:10"));
}

/**
 * The planned test of the lower gain (B) against the old one (A). The smallest difference that would matter and the spread
 * of the driver's neighbouring runs are such that eight pairs follow.
 */
export function makeGainTest(stamps: Stamped, comboId: Id, { asItWas, lowerGain }: Rigs): RigTest {
  return {
    ...stamps,
    comboId,
    question: "Does a gain of 54 % instead of 72 % help in the club hatch?",
    sayA: "gain 72 %",
    sayB: "gain 54 %",
    field: "wheel.gainPercent",
    valueA: asItWas.wheel.gainPercent ?? 0,
    valueB: lowerGain.wheel.gainPercent ?? 0,
    rigA: asItWas.id,
    rigB: lowerGain.id,
    figure: "usual",
    smallestMs: 250,
    spreadMs: 240,
    lapsARun: lapsOfTestRun,
    pairsPlanned: pairs,
    level: 0.1,
    seed,
    pairs: order.map((first) => ({ first })),
    endedAt: instantAt("2026-09-29", "21:05"),
    kept: "B",
  };
}
