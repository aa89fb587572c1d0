import { describe, expect, it } from "vitest";
import { aboutRemark, type RemarkKind, remarkInWords, remarkKinds } from "#domain";

describe("remarks", () => {
  it("has a letter of its own for each", () => {
    expect(remarkKinds.map(({ letter }) => letter).join("")).toBe("oicfsktz");
    expect(new Set(remarkKinds.map(({ letter }) => letter)).size).toBe(remarkKinds.length);
  });

  it("either sets a lap apart or spoils it, and only a spoiling one is a mistake", () => {
    for (const { spoils, apart, mistake } of remarkKinds) {
      expect(spoils).toBe(!apart);
      if (mistake) expect(spoils).toBe(true);
    }
  });

  it("is said in words, with its corner", () => {
    expect(remarkInWords({ kind: "off", corner: 5 })).toBe("off, corner 5");
    expect(remarkInWords({ kind: "slow" })).toBe("slow zone");
  });

  it("has no remark of another kind", () => {
    expect(() => aboutRemark("rain" as RemarkKind)).toThrow("no remark of the kind rain");
  });
});
