import { expect, test } from "vitest";
import { mostMistakesAt } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const corner = (number: number, off: number, cut = 0) => ({
  number,
  counts: [
    ...(off > 0 ? [{ kind: "off", count: off } as const] : []),
    ...(cut > 0 ? [{ kind: "cut", count: cut } as const] : []),
  ],
});

test("the corner with most mistakes is named with its share of all", () => {
  const said = [
    [mostMistakesAt([corner(5, 3, 1), corner(2, 2)]), "Most at corner 5: 4 of 6 mistakes and cuts"],
    [mostMistakesAt([corner(5, 1)]), "Most at corner 5: 1 of 1 mistake or cut"],
    [
      mostMistakesAt([corner(5, 2), corner(7, 2), corner(1, 1)]),
      "Most at corners 5 and 7: 2 each, of 5 mistakes and cuts",
    ],
    [mostMistakesAt([corner(5, 1), corner(7, 1)]), "As many at each: corners 5 and 7, 1 each"],
  ];
  for (const [sentence = "", wanted] of said) {
    expect(sentence).toBe(wanted);
    expectWellFormed(sentence);
  }
});
