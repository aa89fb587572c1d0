import { describe, expect, test } from "vitest";
import { cholesky, solveLower, solveUpper } from "../../../../src/stats/weeks/cholesky.ts";
import { leastAlong } from "../../../../src/stats/weeks/leastAlong.ts";
import { polish } from "../../../../src/stats/weeks/polish.ts";

describe("triangles, by hand", () => {
  const lower = [[2], [1, 3], [-1, 2, 1]];
  const matrix = [
    [4, 2, -2],
    [2, 10, 5],
    [-2, 5, 6],
  ];

  test("a matrix is its triangle times the same turned over", () => {
    expect(cholesky(matrix)).toEqual(lower);
    expect(cholesky([[9]])).toEqual([[3]]);
  });

  test("either triangle is solved", () => {
    expect(solveLower(lower, [2, 7, 6])).toEqual([1, 2, 3]);
    expect(solveUpper(lower, [1, 12, 3])).toEqual([1, 2, 3]);
  });
});

describe("the lowest point along an axis", () => {
  test("is found between the points tried", () => {
    const found = leastAlong((at) => (at - 2.345) ** 2, 0, 10, 11);
    expect(found.at).toBeCloseTo(2.345, 6);
    expect(found.isAtEnd).toBe(false);
  });

  test("lies in the deepest of several valleys", () => {
    const valleys = (at: number) => Math.min((at + 3.2) ** 2 + 1, (at - 4.6) ** 2);
    expect(leastAlong(valleys, -5, 5, 21).at).toBeCloseTo(4.6, 6);
    expect(leastAlong((at) => valleys(-at), -5, 5, 21).at).toBeCloseTo(-4.6, 6);
  });

  test("is told when it is at an end", () => {
    expect(leastAlong((at) => at, 1, 4, 7)).toEqual({ at: expect.closeTo(1, 6), isAtEnd: true });
    expect(leastAlong((at) => -at, 1, 4, 7)).toEqual({ at: expect.closeTo(4, 6), isAtEnd: true });
  });
});

describe("steps to the least squares", () => {
  const line =
    (x: readonly number[]) =>
    ([a = 0, b = 0]: readonly number[]) =>
      x.map((place) => ({ value: a + b * place, slopes: [1, place] }));

  test("a straight line is reached from far away", () => {
    // By hand: through (0, 1), (1000, 3) and (2000, 4) the least squares are 1.1667 + 0.0015·x, with squares of 1/6.
    const { parameters, squares } = polish(line([0, 1000, 2000]), [1, 3, 4], [500, -7]);
    expect(parameters[0]).toBeCloseTo(7 / 6, 9);
    expect(parameters[1]).toBeCloseTo(0.0015, 12);
    expect(squares).toBeCloseTo(1 / 6, 9);
  });

  test("a step that goes too far is shortened", () => {
    // From 3 the whole step leads to −9.5, further away than before.
    const bent = ([p = 0]: readonly number[]) => [{ value: Math.atan(p), slopes: [1 / (1 + p * p)] }];
    const { parameters, squares } = polish(bent, [0], [3]);
    expect(parameters[0]).toBeCloseTo(0, 6);
    expect(squares).toBeLessThan(1e-12);
  });

  test("what is already least stays", () => {
    expect(polish(line([0, 1]), [5, 6], [5, 1])).toEqual({ parameters: [5, 1], squares: 0 });
  });
});
