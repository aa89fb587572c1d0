import { describe, expect, it } from "vitest";
import { type AgainstBest, runReport } from "#stats";
import { sayRun, sayRunFigures } from "#words";
import { aRun, choices } from "../stats/someRows.ts";
import { aReport } from "./aReport.ts";

const spread = { kind: "spread", scatterMs: 312, percent: 0.371, laps: 8 } as const;
const told = (figures: ReturnType<typeof sayRunFigures>) =>
  figures.map(({ label, value, detail }) => `${label} ${value} (${detail})`);

describe("the three numbers of a run", () => {
  it("are best, median and scatter, with what they rest on", () => {
    const run = aRun(1, [84_000, 84_200, 84_000, 84_200, 84_000]);
    const report = runReport({ run, runsBefore: [], pb: { ms: 83_900 }, preferences: choices });
    expect(told(sayRunFigures(report))).toEqual([
      "best 1:24.000 (0.100 s off PB)",
      "usual 1:24.000 (the middle one of 5 laps)",
      "laps differ by 0.14 s (0.17 % of a lap)",
    ]);
  });

  it("of a summary are what was given, to the digits that were given", () => {
    const summary = { laps: 12, bestMs: 84_200, bestDecimals: 1, usualMs: 85_000, usualDecimals: 1, off: 4 };
    const report = runReport({
      run: aRun(2, [], { summary }),
      runsBefore: [],
      pb: { ms: 84_600 },
      preferences: choices,
    });
    expect(told(sayRunFigures(report))).toEqual([
      "best 1:24.2 (at least 0.3 s faster than the old PB)",
      "usual 1:25.0 (as you gave it)",
      "laps differ by — (no laps written down)",
    ]);
    expect(sayRun(report)).toBe("About 1:24.2 is a new PB, at least 0.3 s faster than the old one.");
  });

  it.each<[number, Omit<AgainstBest, "ms">, string]>([
    [1, { pbMs: 83_500, pbDecimals: 3, isNew: false, isLevel: false }, "about 0.2 s off PB"],
    [3, { pbMs: 83_400, pbDecimals: 1, isNew: false, isLevel: false }, "about 0.3 s off PB"],
    [3, { pbMs: 83_700, pbDecimals: 3, isNew: false, isLevel: true }, "the same as PB"],
    [
      1,
      { pbMs: 83_750, pbDecimals: 3, isNew: false, isLevel: true },
      "the same as PB, as far as its digits tell",
    ],
    [
      3,
      { pbMs: 83_750, pbDecimals: 2, isNew: true, isLevel: false },
      "at least 0.05 s faster than the old PB",
    ],
  ])("say of a best of 1:23.700 with %i decimals beside %o: %s", (decimals, against, detail) => {
    const { pbMs } = against;
    const report = aReport(spread, {
      best: { known: true, value: { ms: 83_700, decimals, lapId: "lap" } },
      againstBest: { known: true, value: { ...against, ms: 83_700 - pbMs } },
    });
    expect(sayRunFigures(report)[0]?.detail).toBe(detail);
  });
});
