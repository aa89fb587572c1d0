import { describe, expect, it } from "vitest";
import type { RemarkKind, StripLap } from "#domain";
import { sayStrip, sayStripLap } from "#words";

const lap = (ms: number | undefined, ...kinds: RemarkKind[]): StripLap => ({
  id: String(ms),
  name: "Lap 7",
  ...(ms !== undefined && { ms }),
  remarks: kinds.map((kind) => ({ kind })),
});

describe("sayStrip", () => {
  it("counts the laps, and what went wrong in them", () => {
    const laps = [
      lap(84_600, "out"),
      lap(84_200),
      lap(83_100, "cut"),
      lap(93_000, "spin"),
      lap(88_000, "off"),
      lap(85_000, "traffic"),
      lap(undefined, "off"),
      lap(undefined),
    ];
    expect(sayStrip("Run 2", laps)).toBe(
      "Run 2: 8 laps, best 1:24.200, 3 with a mistake, 1 cut, 1 held up, 2 without a time",
    );
  });

  it("takes no lap for the best that the driver took back, and says a rough one as far as it is known", () => {
    const laps = [
      { ...lap(83_000), isNotBest: true },
      { ...lap(84_200), decimals: 1 },
    ];
    expect(sayStrip("Run 1", laps)).toBe("Run 1: 2 laps, best about 1:24.2");
  });

  it("says when there are none, and when not all are drawn", () => {
    expect(sayStrip("Run 1", [])).toBe("Run 1: no laps");
    expect(sayStrip("Run 1", [lap(84_000), lap(84_100)], 1)).toBe(
      "Run 1: 2 laps, best 1:24.000. 1 of 2 laps are drawn",
    );
  });
});

describe("sayStripLap", () => {
  it("says the time and all that is remarked of it", () => {
    expect(sayStripLap({ ...lap(85_900), remarks: [{ kind: "cut", corner: 7 }] })).toBe(
      "Lap 7: 1:25.900, cut, corner 7",
    );
    expect(sayStripLap({ ...lap(undefined, "off"), surface: "wet" })).toBe("Lap 7: no time, off, wet");
    expect(sayStripLap({ ...lap(84_000), decimals: 1, isFromMemory: true, isBest: true })).toBe(
      "Lap 7: about 1:24.0, PB, from memory",
    );
  });

  it("says of a lap at the edge that its time lies beyond, and of one without a time nothing", () => {
    expect(sayStripLap(lap(93_000, "spin"), "up")).toBe(
      "Lap 7: 1:33.000, spin, slower than the strip reaches",
    );
    expect(sayStripLap(lap(81_000, "cut"), "down")).toBe(
      "Lap 7: 1:21.000, cut, faster than the strip reaches",
    );
    expect(sayStripLap(lap(undefined, "off"), "up")).toBe("Lap 7: no time, off");
  });
});
