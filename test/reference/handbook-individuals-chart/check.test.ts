import { expect, it } from "vitest";
import { individualsChart } from "#stats";
import reference from "./handbook-individuals-chart.json" with { type: "json" };

const { flowRate, cusumSeriesAsIndividuals } = reference.expected.individuals;

it("e-Handbook 6.3.2.2, flow rate: centre and limits as printed", () => {
  const chart = individualsChart(reference.data.flowRate);
  expect(chart?.centre).toBeCloseTo(flowRate.published.centre, 10);
  expect(Math.abs((chart?.sigma ?? Number.NaN) * 1.128 - flowRate.published.meanMovingRange)).toBeLessThan(
    0.00006,
  );
  expect(Math.abs((chart?.upper ?? Number.NaN) - flowRate.published.upper)).toBeLessThan(0.00006);
  expect(Math.abs((chart?.lower ?? Number.NaN) - flowRate.published.lower)).toBeLessThan(0.00006);
  expect(chart?.outside).toEqual(flowRate.published.pointsOutside);
});

it.each([
  ["flowRate", flowRate.computedWithR, reference.data.flowRate],
  ["cusumSeries", cusumSeriesAsIndividuals.computedWithR, reference.data.cusumSeries],
] as const)("%s, computed with R 4.2.2", (_, wanted, values) => {
  const chart = individualsChart(values);
  expect((chart?.sigma ?? Number.NaN) / wanted.sigma).toBeCloseTo(1, 11);
  expect((chart?.upper ?? Number.NaN) / wanted.upper).toBeCloseTo(1, 12);
  expect((chart?.lower ?? Number.NaN) / wanted.lower).toBeCloseTo(1, 12);
  expect(chart?.outside).toEqual(wanted.outside);
  expect(chart?.sameSide).toEqual(wanted.positionsEndingEightOrMoreOnOneSide);
});
