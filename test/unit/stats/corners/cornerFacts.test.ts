import { describe, expect, test } from "vitest";
import type { Corner, CornerReview } from "#domain";
import { cornerBefore, cornerFacts, gapsIn } from "../../../../src/stats/corners/cornerFacts.ts";

const numbered = (...numbers: number[]): Corner[] => numbers.map((number) => ({ number }));
const review = (day: number, corners: CornerReview["corners"]): CornerReview => ({
  id: `review ${day}`,
  createdAt: day,
  updatedAt: day,
  comboId: "combo",
  on: `2026-01-0${day}`,
  corners,
});

describe("the corner before", () => {
  test("is the one numbered one less, where it is known", () => {
    expect(cornerBefore(numbered(1, 2, 3), 3)?.number).toBe(2);
    expect(cornerBefore(numbered(1, 3), 3)).toBeUndefined();
  });

  test("before the first is the last, where every corner up to it is known", () => {
    expect(cornerBefore(numbered(3, 1, 2), 1)?.number).toBe(3);
    expect(cornerBefore(numbered(1, 2, 9), 1)).toBeUndefined();
  });

  test("of the only corner there is none", () => {
    expect(cornerBefore(numbered(1), 1)).toBeUndefined();
    expect(cornerBefore([], 1)).toBeUndefined();
  });
});

describe("the facts of a corner", () => {
  const combo = {
    corners: [
      { number: 1, after: "short" },
      { number: 2, bend: "slow" },
      { number: 3, after: "long", afterLength: 700 },
    ],
    car: { grip: 1.3 },
    lowestSpeeds: [{ number: 2, speed: 20 }],
    // The newest first.
    reviews: [
      review(9, [{ number: 2, braking: "late" }]),
      review(5, [{ number: 2, exit: 1 }]),
      review(1, [{ number: 2, exit: 3 }]),
    ],
  } as const;

  test("are its own, its car's, the straight before it, its lowest speed and the gaps last seen", () => {
    expect(cornerFacts(2, combo)).toEqual({
      corner: { number: 2, bend: "slow" },
      car: { grip: 1.3 },
      before: { after: "short", length: undefined },
      lowestSpeed: 20,
      seenOn: { entry: undefined, apex: undefined, exit: 1 },
    });
    expect(cornerFacts(1, combo)).toMatchObject({ before: { after: "long", length: 700 } });
  });

  test("of a corner that the layout does not have are its number", () => {
    expect(cornerFacts(7, combo)).toMatchObject({ corner: { number: 7 }, before: { after: undefined } });
    expect(cornerFacts(7, combo).lowestSpeed).toBeUndefined();
  });
});

test("a review that said something of a corner but looked at no gap saw none", () => {
  expect(gapsIn(review(1, [{ number: 2, throttle: "late" }]), 2)).toBeUndefined();
  expect(gapsIn(review(1, [{ number: 2, apex: 0 }]), 2)).toMatchObject({ apex: 0 });
  expect(gapsIn(review(1, [{ number: 2, apex: 0 }]), 3)).toBeUndefined();
});
