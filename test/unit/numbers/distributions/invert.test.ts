import { expect, test } from "vitest";
import { invertTail } from "../../../../src/numbers/distributions/invert.ts";

/** e^−x, and how often it is asked for. */
function exponential() {
  let asked = 0;
  const tail = (x: number) => {
    asked += 1;
    return Math.exp(-x);
  };
  const density = (x: number) => Math.exp(-x);
  return { tail, density, asked: () => asked };
}

test("finds where e^−x comes down to a share, at −ln of it, from guesses far below and far above", () => {
  for (const wanted of [0.999, 0.5, 0.01, 1e-12])
    for (const start of [1e-9, 0.1, 3, 400]) {
      const { tail, density } = exponential();
      expect(invertTail(tail, density, wanted, start) / -Math.log(wanted)).toBeCloseTo(1, 12);
    }
});

test("from a near guess it is there in a few of Newton's steps, where halving alone takes fifty", () => {
  for (const start of [0.5, 0.7, 1]) {
    const { tail, density, asked } = exponential();
    expect(invertTail(tail, density, 0.5, start)).toBeCloseTo(Math.LN2, 14);
    expect(asked()).toBeLessThan(20);
  }
});

test("a density by which the steps lead astray costs time and no accuracy", () => {
  for (const astray of [() => 0, () => -1, () => 1e-9]) {
    const { tail, asked } = exponential();
    expect(invertTail(tail, astray, 0.2, 1)).toBeCloseTo(-Math.log(0.2), 12);
    expect(asked()).toBeLessThan(205);
  }
});
