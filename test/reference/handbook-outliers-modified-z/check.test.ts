import { expect, it } from "vitest";
import { modifiedZScores } from "#stats";
import reference from "./handbook-outliers-modified-z.json" with { type: "json" };

it.each(["rosner", "massSpectrometer"] as const)(
  "e-Handbook 1.3.5.17, %s: scores computed with R 4.2.2",
  (name) => {
    const { modifiedZ, "over3.5": over } = reference.expected[name].computedWithR;
    const scores = modifiedZScores(reference.data[name]);
    modifiedZ.forEach((score, index) => {
      expect(scores[index]).toBeCloseTo(score, 10);
    });
    expect(scores.flatMap((score, index) => (Math.abs(score) > 3.5 ? [index] : []))).toEqual(over);
  },
);

it("the outliers the handbook prints for Rosner's data are those beyond 3.5", () => {
  const scores = modifiedZScores(reference.data.rosner);
  const beyond = reference.data.rosner.filter((_, index) => Math.abs(scores[index] ?? 0) > 3.5);
  expect(beyond.toSorted()).toEqual(reference.expected.rosner.publishedOutliersByESD.toSorted());
});
