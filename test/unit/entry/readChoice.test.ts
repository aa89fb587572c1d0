import fc from "fast-check";
import { expect, test } from "vitest";
import { readChoice } from "#entry";

const kinds = {
  name: "Kind",
  words: [{ value: "short" }, { value: "slow" }, { value: "middling", also: ["medium"] }],
} as const;
const read = (text: string) => {
  const reading = readChoice(text, kinds);
  return reading.ok ? reading.value : reading.problem;
};

test.each([
  ["slow", "slow"],
  [" SL ", "slow"],
  ["sh", "short"],
  ["m", "middling"],
  ["medium", "middling"],
  ["med", "middling"],
  ["", undefined],
  ["   ", undefined],
])("%j is clear", (text, value) => {
  expect(read(text)).toBe(value);
});

test("what may mean two words is asked about, and what means none is refused with what would be right", () => {
  expect(read("s")).toMatchObject({
    wrong: "Kind: “s” may mean several words.",
    right: "Write short or slow.",
  });
  expect(read("twisty")).toMatchObject({
    wrong: "Kind: “twisty” is none of the words it may be.",
    right: "Write short, slow or middling.",
  });
  const reading = readChoice("x", { ...kinds, or: "a length such as 250" });
  expect(reading).toMatchObject({
    problem: { right: "Write short, slow or middling, or a length such as 250." },
  });
});

test("a word that another one begins with is taken as it stands", () => {
  const words = { name: "Kind", words: [{ value: "fast" }, { value: "faster" }] } as const;
  expect(readChoice("fast", words)).toEqual({ ok: true, value: "fast" });
});

test("no text makes it throw or give a word that is none", () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      const reading = readChoice(text, kinds);
      if (reading.ok) expect([undefined, "short", "slow", "middling"]).toContain(reading.value);
      else expect(reading.problem.wrong.length).toBeLessThan(80);
    }),
  );
});
