import { expect } from "vitest";
import { notToSay } from "../../support/wordsNotSaid.ts";

/** Faults that no sentence on screen may have. */
const faults: readonly [string, RegExp][] = [
  ["no number", /NaN|Infinity|undefined|null|\[object/],
  ["two spaces", / {2}|^ | $/],
  ["a hyphen for a minus", /(^|[\s(])-\d/],
  ["one of many", /(^|[^\d.:])1 (laps|sessions|runs|mistakes|weeks|steps|points)\b/],
  ["many of one", /\b([2-9]|\d{2,}) (lap|session|run|mistake|week|step)\b(?! \d)/],
  ["loud", /!/],
  ["two stops", /\.\.|,\.|;\.|, ,/],
];

/** Fails where a sentence is not well formed, or says a word that may not appear, saying how. */
export function expectWellFormed(sentence: string): void {
  const found = [
    ...faults.filter(([, pattern]) => pattern.test(sentence)).map(([name]) => name),
    ...notToSay(sentence),
  ];
  expect({ sentence, found }).toEqual({ sentence, found: [] });
}
