import { describe, expect, it } from "vitest";
import {
  isClean,
  isExact,
  isMeasure,
  isMistake,
  isTimed,
  type Lap,
  lapsInOrder,
  latestMs,
  mayBeBest,
  type RemarkKind,
  type Run,
  remarkKinds,
  worthOf,
} from "#domain";

const stamps = { createdAt: 0, updatedAt: 0 };

function lap(n: number, ms: number | undefined, ...kinds: RemarkKind[]): Lap {
  const remarks = kinds.map((kind) => ({ kind }));
  const rest = { ...stamps, id: `lap ${n}`, n, source: "typed", remarks } as const;
  return ms === undefined ? rest : { ...rest, ms, decimals: 3 };
}

const run: Run = {
  ...stamps,
  id: "run",
  sessionId: "s",
  comboId: "c",
  n: 1,
  startedAt: 0,
  kind: "pace",
  effort: "full",
  surface: "dry",
  note: "",
  laps: [lap(3, 83_000), lap(1, 95_000, "out"), lap(2, 84_000), lap(4, 90_000, "spin"), lap(5, undefined)],
};

describe("sets of laps", () => {
  it("never counts an out lap or an in lap as timed", () => {
    expect(isTimed(lap(1, 90_000))).toBe(true);
    expect(isTimed(lap(1, 90_000, "out"))).toBe(false);
    expect(isTimed(lap(1, 90_000, "in"))).toBe(false);
    expect(isTimed(lap(1, undefined))).toBe(false);
  });

  it("calls a lap with a spoiling remark timed but not clean", () => {
    for (const kind of ["cut", "off", "spin", "contact", "traffic", "slow"] as const) {
      expect(isTimed(lap(1, 90_000, kind))).toBe(true);
      expect(isClean(lap(1, 90_000, kind))).toBe(false);
    }
    expect(isClean(lap(1, 90_000))).toBe(true);
  });

  it("counts own mistakes and laps without a time, but no lap to or from the pits", () => {
    const mistakes = remarkKinds
      .filter(({ kind }) => isMistake(lap(1, 90_000, kind)))
      .map(({ kind }) => kind);
    expect(mistakes).toEqual(["off", "spin", "contact"]);
    expect(isMistake(lap(1, undefined))).toBe(true);
    expect(isMistake(lap(1, undefined, "traffic"))).toBe(true);
    expect(isMistake(lap(1, undefined, "out"))).toBe(false);
  });

  it("leaves times from memory and with fewer decimals out of spreads", () => {
    expect(isExact({ decimals: 3, source: "typed" }, 3)).toBe(true);
    expect(isExact({ decimals: 2, source: "typed" }, 3)).toBe(false);
    expect(isExact({ decimals: 2, source: "typed" }, 2)).toBe(true);
    expect(isExact({ decimals: 3, source: "memory" }, 3)).toBe(false);
    expect(isExact({ source: "typed" }, 1)).toBe(false);
  });

  it("knows the latest value a time in tenths may stand for", () => {
    expect(latestMs({ ms: 83_400, decimals: 1 })).toBe(83_499);
    expect(latestMs({ ms: 83_000, decimals: 0 })).toBe(83_999);
    expect(latestMs({ ms: 83_456, decimals: 3 })).toBe(83_456);
    expect(latestMs({ ms: 83_456 })).toBe(83_456);
  });

  it("lets no lap stand as a best that is spoilt, has no time or was taken back", () => {
    expect(mayBeBest(lap(1, 83_000))).toBe(true);
    expect(mayBeBest({ ...lap(1, 83_000), isNotBest: true })).toBe(false);
    expect(mayBeBest(lap(1, 83_000, "cut"))).toBe(false);
    expect(mayBeBest(lap(1, undefined))).toBe(false);
  });

  it("measures what is typed later by no lap that was confirmed as odd", () => {
    expect(isMeasure(lap(1, 83_000))).toBe(true);
    expect(isMeasure({ ...lap(1, 83_000), isNotBest: true })).toBe(true);
    expect(isMeasure({ ...lap(1, 983_000), isOdd: true })).toBe(false);
    expect(isMeasure(lap(1, 83_000, "off"))).toBe(false);
  });

  it("puts laps of one number, which two devices gave, in the same order on both", () => {
    const [one, other] = [
      { ...lap(1, 83_000), id: "a" },
      { ...lap(1, 84_000), id: "b" },
    ];
    expect(lapsInOrder({ laps: [one, other] })).toEqual([one, other]);
    expect(lapsInOrder({ laps: [other, one] })).toEqual([one, other]);
  });

  it("puts laps in order, without the deleted ones", () => {
    const laps = [...run.laps, { ...lap(6, 80_000), deletedAt: 5 }];
    expect(lapsInOrder({ laps }).map(({ n }) => n)).toEqual([1, 2, 3, 4, 5]);
  });

  it("gives each lap the most that it may stand for", () => {
    expect(worthOf(lap(1, 90_000))).toBe("best");
    expect(worthOf({ ...lap(1, 90_000), isNotBest: true })).toBe("clean");
    expect(worthOf(lap(1, 90_000, "traffic"))).toBe("timed");
    expect(worthOf(lap(1, 90_000, "in"))).toBe("none");
    expect(worthOf(lap(1, undefined))).toBe("none");
  });
});
