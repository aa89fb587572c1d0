import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { known, type TargetKind, targetKinds, unknown } from "#domain";
import { targetProgress } from "#stats";
import { sayKnownFigure, sayProgress, sayTarget, sayTargetFigure, sayWay } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

describe("a target in words", () => {
  it.each([
    [{ kind: "best", value: 83_000, by: "2026-10-14" }, "Best lap 1:23.000 by Wed 14 Oct 2026"],
    [{ kind: "median", value: 84_000 }, "Usual lap 1:24.000"],
    [{ kind: "meanOf", value: 84_500, laps: 10 }, "Mean of 10 laps 1:24.500"],
    [{ kind: "scatter", value: 300 }, "Scatter ± 0.30 s"],
    [{ kind: "cleanShare", value: 800 }, "Share of clean laps 80.0 %"],
  ] as const)("%o", (target, sentence) => expect(sayTarget(target)).toBe(sentence));
});

describe("the figure that stands against a target", () => {
  it("is a usual lap to the hundredth where it is a level, and as its laps are known where it was driven", () => {
    const level = { value: 84_320, decimals: 2, isLevel: true } as const;
    expect(sayTargetFigure("median", level)).toBe("level 1:24.32");
    expect(sayTargetFigure("median", { value: 84_450, decimals: 1 })).toBe("1:24.4");
    expect(sayTargetFigure("median", { value: 84_450.5, decimals: 3 })).toBe("1:24.451");
    expect(sayKnownFigure("median", 84_317)).toBe("level 1:24.32");
  });

  it("is a best lap as it is known, and a scatter and a share in their units", () => {
    expect(sayTargetFigure("best", { value: 83_400, decimals: 1 })).toBe("about 1:23.4");
    expect(sayTargetFigure("best", { value: 83_412, decimals: 3 })).toBe("1:23.412");
    expect(sayKnownFigure("best", 83_412)).toBe("1:23.412");
    expect(sayTargetFigure("scatter", { value: 300, decimals: 3 })).toBe("± 0.30 s");
    expect(sayTargetFigure("cleanShare", { value: 812, decimals: 3 })).toBe("81.2 %");
  });
});

describe("progress", () => {
  const reached = { kind: "reached", on: "2026-03-10" } as const;
  const open = { kind: "open", daysLeft: 3, lostOn: undefined } as const;
  const of = (kind: TargetKind, target: number, now: number, start: number) => {
    const isThere = kind === "cleanShare" ? now >= target : now <= target;
    const progress = targetProgress(target, now, start);
    return sayProgress({ target: { kind }, standing: isThere ? reached : open, progress });
  };

  it("tells the way and what is left", () => {
    expect(of("best", 84_000, 84_250, 85_000)).toBe("75 % of the way, 0.250 s to go");
    expect(of("cleanShare", 800, 700, 600)).toBe("50 % of the way, 10.0 % to go");
    expect(of("scatter", 200, 300, 400)).toBe("50 % of the way, 0.10 s to go");
  });

  it("says reached, with what is to spare", () => {
    expect(of("best", 84_000, 84_000, 85_000)).toBe("Reached");
    expect(of("best", 84_000, 83_900, 85_000)).toBe("Reached, with 0.100 s to spare");
    expect(of("cleanShare", 800, 850, 600)).toBe("Reached, with 5.0 % to spare");
  });

  it("calls no usual lap reached that stands open, however far the level lies beyond it", () => {
    const progress = targetProgress(84_000, 83_950, 85_000);
    expect(sayProgress({ target: { kind: "median" }, standing: open, progress })).toBe(
      "Your level is 0.05 s faster, not very likely yet",
    );
    expect(sayProgress({ target: { kind: "median" }, standing: reached, progress })).toBe(
      "Reached, with 0.05 s to spare",
    );
  });

  it("says how much further away it is", () =>
    expect(of("median", 84_000, 85_400, 85_000)).toBe("1.40 s to go, 0.40 s further than when it was set"));

  it("says that a target lost again was reached when it was set", () =>
    expect(of("cleanShare", 700, 650, 800)).toBe("5.0 % to go, though it was reached when it was set"));

  it("gives the reason where it is not known", () =>
    expect(
      sayProgress({
        target: { kind: "best" },
        standing: open,
        progress: unknown({ because: "no figure yet" }),
      }),
    ).toBe("No figure yet to compare with the target"));

  it("never says 100 % of the way before the target is reached", () => {
    expect(of("best", 84_000, 84_001, 85_000)).toBe("99 % of the way, 0.001 s to go");
    fc.assert(
      fc.property(
        fc.constantFrom(...targetKinds),
        fc.integer({ min: 1, max: 999 }),
        fc.integer({ min: 0, max: 1000 }),
        fc.integer({ min: 1000, max: 2000 }),
        (kind, target, now, start) => {
          const sentence = of(kind, target, now, start);
          expectWellFormed(sentence);
          const isReached = kind === "cleanShare" ? now >= target : now <= target;
          expect(sentence.startsWith("Reached")).toBe(isReached);
          const way = /^(\d+) % of the way/.exec(sentence)?.[1];
          if (way !== undefined) expect(Number(way)).toBeLessThan(100);
        },
      ),
      { seed: 6 },
    );
  });

  it("tells what is left though nothing was driven yet", () =>
    expect(
      sayProgress({ target: { kind: "best" }, standing: open, progress: known({ progress: 0, left: 1000 }) }),
    ).toBe("0 % of the way, 1.000 s to go"));
});

describe("the way to a target in words", () => {
  const target = {
    kind: "best",
    start: 84_245,
    setOn: "2026-10-20",
    value: 83_300,
    by: "2026-12-13",
  } as const;

  it("names where it began, where it is and what is wanted", () => {
    expect(sayWay(target, { value: 83_744, decimals: 3 })).toBe(
      "The way from 1:24.245 on Tue 20 Oct 2026 to 1:23.744 now; wanted 1:23.300 by Sun 13 Dec 2026",
    );
    const { start: _, by: __, ...bare } = target;
    expect(sayWay(bare, undefined)).toBe("The way from Tue 20 Oct 2026 to today; wanted 1:23.300");
  });
});
