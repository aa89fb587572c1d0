import { describe, expect, it } from "vitest";
import { mannKendall, median, theilSen } from "#stats";
import reference from "./practice-reaction-times.json" with { type: "json" };

interface Person {
  readonly mannKendallS: number;
  readonly pTwoSidedNormal: number;
  readonly pTwoSidedExact?: number;
  readonly theilSenSlopePerTrial: number;
}

const people = reference.expected as unknown as Readonly<Record<string, Person>>;
const medians = reference.data.blockMediansMs as Readonly<Record<string, number[]>>;

describe.each(Object.keys(people))("practice of %s, computed with R 4.2.2", (name) => {
  const wanted = people[name] as Person;
  const values = medians[name] as number[];

  it("trend over ten blocks of 80 trials", () => {
    const test = mannKendall(values);
    expect(test?.s).toBe(wanted.mannKendallS);
    expect(test?.p).toBeCloseTo(wanted.pTwoSidedExact ?? wanted.pTwoSidedNormal, 9);
    expect(theilSen(reference.data.x, values, 0.9)?.slope).toBeCloseTo(wanted.theilSenSlopePerTrial, 9);
  });
});

it.each(Object.entries(reference.data.allTrialsMs))(
  "the block medians of %s are those of the trials",
  (name, trials) => {
    const blocks = Array.from({ length: 10 }, (_, block) =>
      median(trials.slice(80 * block, 80 * block + 80)),
    );
    expect(blocks).toEqual(medians[name]);
  },
);
