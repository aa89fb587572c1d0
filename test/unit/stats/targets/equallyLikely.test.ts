import { describe, expect, it } from "vitest";
import { equallyLikely } from "../../../../src/stats/targets/equallyLikely.ts";

describe("equally likely sessions", () => {
  it("are the middles of equal shares of the futures, in order", () => {
    const first = Float64Array.from([4, 1, 3, 2, 8, 6, 7, 5]);
    expect(equallyLikely(first, 4)).toEqual([1, 3, 5, 7]);
    expect(equallyLikely(first, 8)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it("leave open what is not reached, and are all open where nothing is", () => {
    const first = Float64Array.from([2, Infinity, Infinity, 1]);
    expect(equallyLikely(first, 2)).toEqual([1, undefined]);
    expect(equallyLikely(first.fill(Infinity), 2)).toEqual([undefined, undefined]);
  });
});
