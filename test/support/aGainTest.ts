import type { addRigTest } from "#db";

type NewTest = Parameters<typeof addRigTest>[1];

/** A rig test of less gain as it is planned: 72 % as A and 54 % as B, so many pairs in that order, with the fields given. */
export function aGainTest(
  comboId: string,
  order: readonly ("A" | "B")[],
  fields: Partial<NewTest> = {},
): NewTest {
  return {
    comboId,
    question: "Less gain?",
    sayA: "gain 72 %",
    sayB: "gain 54 %",
    pairsPlanned: order.length,
    level: 0.1,
    seed: 1,
    pairs: order.map((first) => ({ first })),
    ...fields,
  };
}
