import { expect, it } from "vitest";
import { type Lap, sayCountedAs, signsOf } from "#domain";

const plain: Pick<Lap, "remarks" | "source" | "ms" | "decimals"> = {
  ms: 83_456,
  decimals: 3,
  remarks: [],
  source: "typed",
};

it("nothing is said of a clean lap whose time is all shown", () => {
  expect(signsOf(plain)).toBe("");
  expect(sayCountedAs(plain)).toBeUndefined();
  expect(sayCountedAs({ ms: 83_400, decimals: 1 })).toBeUndefined();
  expect(sayCountedAs({})).toBeUndefined();
  expect(sayCountedAs({ ms: 83_400 })).toBeUndefined();
});

it("a lap that was worked out says what it counts as, in as few decimals as tell it", () => {
  expect(sayCountedAs({ ms: 83_420, decimals: 1 })).toBe("counted as 1:23.42");
  expect(sayCountedAs({ ms: 83_400, decimals: 0 })).toBe("counted as 1:23.4");
  expect(sayCountedAs({ ms: 83_421, decimals: 2 })).toBe("counted as 1:23.421");
});

it("all that is to be said of a lap stands in one order", () => {
  const lap: Parameters<typeof signsOf>[0] = {
    ms: 83_420,
    decimals: 1,
    isNotBest: true,
    remarks: [{ kind: "off", corner: 5 }, { kind: "traffic" }],
    source: "memory",
  };
  expect(signsOf(lap)).toBe("counted as 1:23.42 · not a PB · off, corner 5, traffic · from memory");
  expect(signsOf({ ...plain, isNotBest: true })).toBe("not a PB");
  expect(signsOf({ ...plain, source: "memory" })).toBe("from memory");
});
