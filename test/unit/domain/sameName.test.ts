import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { likelyTwin, nameKeys, sameName } from "#domain";

/** Names as drivers write them, and any text: letters with marks, other scripts, invisible signs, broken halves. */
const letters = fc.constantFrom(
  ..."aAeE1ßıIiÅåéñøсйиハバはﾊ走कख²①ＧT-,'".split(""),
  "e\u0301",
  "A\u030a",
  "\u200b",
  "\u00a0",
  " ",
  "\u0301",
  "का",
);
const aName = fc.oneof(
  fc.array(letters, { maxLength: 6 }).map((signs) => signs.join("")),
  fc.string({ unit: "binary", maxLength: 8 }),
);
const runs = { seed: 1507, numRuns: 2000 };

describe("one name", () => {
  it("is the same in another case, with other spaces and with invisible signs", () => {
    expect(sameName("Varnholt Ríng", " varnholt  RÍNG\u200B")).toBe(true);
    expect(sameName("Varnholt Ring", "VarnholtRing")).toBe(true);
  });

  // Equivalent by the normalization forms of UAX #15 (its examples: Å, ｶﾞ, ﬁ).
  it.each([
    ["Café", "Cafe\u0301"],
    ["Über", "U\u0308ber"],
    ["\u212b", "\u00c5"],
    ["ＧＴ", "GT"],
    ["ｶﾞ", "ガ"],
    ["ﬁn", "fin"],
    ["Fen 1²", "Fen 12"],
  ])("%s is %s", (a, b) => {
    expect(sameName(a, b)).toBe(true);
    expect(likelyTwin(a, b)).toBe(false);
  });

  // Differences of the second level of UTS #10 (accents), and of what a keyboard without them leaves.
  it.each([
    ["Cafe", "Café"],
    ["ハス", "バス"],
    ["Straße", "STRASSE"],
    ["Angstrom", "Ångström"],
  ])("%s is likely meant for %s, and asked about", (a, b) => {
    expect(sameName(a, b)).toBe(false);
    expect(likelyTwin(a, b)).toBe(true);
  });

  // Differences of the first level of UTS #10: other letters.
  it.each([
    ["Varnholt Ring", "Varnholt Rings"],
    ["कर", "कार"],
    ["и1", "й1"],
    ["I1", "ı1"],
    ["Fen-1", "Fen1"],
    ["", "a"],
  ])("%s is another than %s", (a, b) => {
    expect(sameName(a, b)).toBe(false);
    expect(likelyTwin(a, b)).toBe(false);
  });

  it("is the same however it is composed", () => {
    fc.assert(
      fc.property(aName, (name) => {
        for (const form of ["NFC", "NFD", "NFKC", "NFKD"] as const)
          expect(sameName(name, name.normalize(form))).toBe(true);
      }),
      runs,
    );
  });

  it("is the same as itself, both ways, and as whatever is the same as it", () => {
    fc.assert(
      fc.property(aName, aName, aName, (a, b, c) => {
        expect(sameName(a, a)).toBe(true);
        expect(likelyTwin(a, a)).toBe(false);
        expect(sameName(a, b)).toBe(sameName(b, a));
        expect(likelyTwin(a, b)).toBe(likelyTwin(b, a));
        if (sameName(a, b)) expect(sameName(b, c)).toBe(sameName(a, c));
        if (sameName(a, b)) expect(likelyTwin(b, c)).toBe(likelyTwin(a, c));
      }),
      runs,
    );
  });

  it("has a key that it shares with all that are the same, and with no other", () => {
    fc.assert(
      fc.property(fc.array(aName, { maxLength: 12 }), (names) => {
        const [sameKey, likelyKey] = [nameKeys(), nameKeys("likely")];
        for (const name of names)
          expect([sameKey(name), likelyKey(name)]).toEqual([sameKey(name), likelyKey(name)]);
        for (const a of names)
          for (const b of names) {
            expect(sameKey(a) === sameKey(b)).toBe(sameName(a, b));
            expect(likelyKey(a) === likelyKey(b)).toBe(sameName(a, b) || likelyTwin(a, b));
          }
      }),
      { ...runs, numRuns: 500 },
    );
  });
});
