import { expect, test } from "vitest";
import { varianceComponents } from "../../../src/stats/evenings/spreadSources.ts";
import reference from "./pastes.json" with { type: "json" };

test("Davies & Goldsmith 1972, strength of paste: batches, casks and assays as lme4 prints them", () => {
  const { evenings, runs, laps } = varianceComponents(reference.strength);
  const { batch, cask, assay } = reference.published;
  expect(evenings).toBeCloseTo(batch, 3);
  expect(runs).toBeCloseTo(cask, 3);
  expect(laps).toBeCloseTo(assay, 3);
});
