import { expect, test } from "vitest";
import { normalCdf, quickNormalCdf } from "#numbers";

test("the quick normal distribution function is the exact one to 1e-14, and in small tails to 1e-6 of itself", () => {
  for (let z = -9; z <= 9; z += 0.01) {
    expect(Math.abs(quickNormalCdf(z) - normalCdf(z))).toBeLessThan(1e-14);
    if (z < -5) expect(Math.abs(quickNormalCdf(z) / normalCdf(z) - 1)).toBeLessThan(1e-6);
  }
  expect(quickNormalCdf(Infinity)).toBe(1);
  expect(quickNormalCdf(-Infinity)).toBe(0);
});
