import { expect, test } from "vitest";
import { sentencesOf } from "../support/sentencesOf.ts";
import { notToSay, wordsNotSaid } from "../support/wordsNotSaid.ts";
import { readSources } from "./sources.ts";

/** Rooms that compute and make no sentence: what has words there is a kind, or a fault of the code. */
const wordless = /^(?:stats|combo|numbers|physics)\//;
const shown = readSources("src")
  .filter(({ path }) => !wordless.test(path))
  .map(({ path, text }) => ({ path, sentences: sentencesOf(path, text) }));

test("nothing on screen says a word of the list", () => {
  expect(shown.flatMap(({ sentences }) => sentences).length).toBeGreaterThan(1500);
  const found = shown.flatMap(({ path, sentences }) =>
    sentences.flatMap((sentence) => notToSay(sentence).map((what) => `${path}: ${sentence}: ${what}`)),
  );
  expect(found).toEqual([]);
});

test.each([
  [
    "a.tsx",
    "export const A = () => <p>It is surely\n faster.</p>;",
    ["“surely”: very likely, likely, may be chance"],
  ],
  ["a.tsx", 'export const A = () => <button type="button">Fold</button>;', ["“Fold”: hide"]],
  [
    "a.tsx",
    'export const A = () => <Part title="Gained and spent" />;',
    ["“Gained and spent”: this week against last"],
  ],
  ["a.tsx", 'export const A = ({ o }) => <p>{o ? "fold" : "open"}</p>;', ["“fold”: hide"]],
  ["a.ts", "export const say = () => `20 futures`;", ["“futures”: so many chances in 20"]],
  ["a.ts", 'export const a = { text: "not less steady" };', ["“not less”: say it the other way round"]],
  ["a.ts", "// surely a comment\nexport const a = 1;", []],
  ["a.ts", 'export type A = "surely so" | "level with PB";', []],
  ["a.ts", 'export const a = (b: string) => b === "folded up" || b === "surely so";', []],
  ["a.tsx", 'export const A = ({ o }) => <p data-pad={o ? "folded" : "open"}>Hide</p>;', []],
  ["a.tsx", 'export const A = () => <p className="fold balance" id="fold">Hide</p>;', []],
] as const)("of %s, %s", (name, text, faults) =>
  expect(sentencesOf(name, text).flatMap(notToSay)).toEqual(faults),
);

test("every entry of the list finds something, and says what to say", () => {
  const failed = [
    "surely more than 1.64 s",
    "so this is a little too sure",
    "reached in 10 of 20 futures",
    "a 70 % chance",
    "Mostly assumption",
    "range it lies in, 9 in 10 sure",
    "Pointed at: lap 5",
    "not less steady by more than 0.02 %",
    "No clear change in 11 weeks",
    "Laps of this run compare with no others",
    "level with your PB",
    "0.313 s under the old one",
    "Mostly pace: 1.25 of 2.01 s",
    "repeatability",
    "balance",
    "laps to the pace",
    "Fold",
    "Rest",
    "none to lay beside them",
    "The number of a corner stands behind @",
    "practice taken out",
    "One run in four has one by chance",
    "gained and spent",
    "there is no other; Data makes one",
    "what is asked for must all hold",
    "Empty all fields",
    "Put this record right",
    "A change: begin a new record",
    "No target holds for this combo",
    "A good moment for a new one",
    "not enough steps of neighbouring sessions",
    "Well done!",
  ];
  for (const sentence of failed)
    expect({ sentence, found: notToSay(sentence) }).not.toMatchObject({ found: [] });
  for (const [pattern, instead] of wordsNotSaid) {
    expect({ pattern, found: failed.some((sentence) => pattern.test(sentence)) }).toMatchObject({
      found: true,
    });
    expect(instead).not.toBe("");
  }
});
