import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { known, type TargetKind, targetKinds, unknown } from "#domain";
import { targetProgress } from "#stats";
import { sayProgress, sayTarget } from "#words";
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
      "0.050 s beyond it, not very likely yet",
    );
    expect(sayProgress({ target: { kind: "median" }, standing: reached, progress })).toBe(
      "Reached, with 0.050 s to spare",
    );
  });

  it("says how much further away it is", () =>
    expect(of("median", 84_000, 85_400, 85_000)).toBe("1.400 s to go, 0.400 s further than when it was set"));

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
