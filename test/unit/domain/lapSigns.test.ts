import { expect, it } from "vitest";
import { type Lap, sayCountedAs, sayFewDecimals, signsOf } from "#domain";

const plain: Pick<Lap, "remarks" | "source" | "ms" | "decimals"> = {
  ms: 83_456,
  decimals: 3,
  remarks: [],
  source: "typed",
};

it("nothing is said of a clean lap whose time is all shown", () => {
  expect(signsOf(plain, 3)).toBe("");
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
  const before = "counted as 1:23.42 · not a PB · off, corner 5, traffic";
  expect(signsOf(lap, 3)).toBe(`${before} · from memory`);
  expect(signsOf({ ...lap, source: "typed" }, 3)).toBe(`${before} · in tenths`);
  expect(signsOf({ ...plain, isNotBest: true }, 3)).toBe("not a PB");
  expect(signsOf({ ...plain, source: "memory" }, 3)).toBe("from memory");
});

it("a time in fewer decimals than the simulator shows says in which, one without a time nothing", () => {
  const ms = 83_000;
  expect([0, 1, 2, 3].map((decimals) => sayFewDecimals({ ms, decimals }, 3))).toEqual([
    "in whole seconds",
    "in tenths",
    "in hundredths",
    undefined,
  ]);
  expect(sayFewDecimals({ ms, decimals: 1 }, 1)).toBeUndefined();
  expect(sayFewDecimals({ ms, decimals: 1 }, 2)).toBe("in tenths");
  expect(sayFewDecimals({ ms }, 3)).toBeUndefined();
  expect(sayFewDecimals({}, 3)).toBeUndefined();
});
