import { expect, it } from "vitest";
import { pairsNeeded } from "#stats";
import reference from "./number-of-pairs.json" with { type: "json" };

const { cases, pairedTByR } = reference.expected;

it.each(cases)(
  "scipy 1.10.1: $n pairs for $delta at a spread of $sd",
  ({ alphaTwoSided, power, sd, delta, n }) => {
    expect(pairsNeeded({ difference: delta, standardDeviation: sd, power, level: alphaTwoSided })).toBe(n);
  },
);

it.each(pairedTByR)(
  "R 4.2.2 power.t.test: $pairs for $delta at $sd",
  ({ alphaTwoSided, power, sd, delta, pairs }) => {
    const planned = pairsNeeded({ difference: delta, standardDeviation: sd, power, level: alphaTwoSided });
    expect(planned).toBeGreaterThanOrEqual(Math.ceil(pairs));
    expect(planned).toBeLessThanOrEqual(Math.max(pairs + 4, 1.1 * pairs));
  },
);
