import { describe, expect, it } from "vitest";
import { runReport, sessionReport, usualDecimals } from "#stats";
import { sayRunFigures } from "#words";
import { aRun, aSession, choices } from "../someRows.ts";

const tenths = [83_400, 83_700, 83_500].map((ms) => ({ ms, decimals: 1 }));

describe("the usual lap", () => {
  it("of laps typed in tenths is not shown to thousandths", () => {
    const report = runReport({ run: aRun(1, tenths), runsBefore: [], preferences: choices });
    expect(sayRunFigures(report).find(({ label }) => label === "usual")?.value).toBe("1:23.5");
    const session = sessionReport({ session: aSession(0), runs: [aRun(1, tenths)], preferences: choices });
    expect(session.pace).toMatchObject({ median: 83_500, medianDecimals: 1 });
  });

  it("has the decimals that more than half of its laps have", () => {
    const of = (...decimals: (number | undefined)[]) =>
      usualDecimals(decimals.map((one) => ({ decimals: one })));
    expect(of()).toBe(3);
    expect(of(undefined)).toBe(3);
    expect(of(1, 3)).toBe(1);
    expect(of(3, 1, 3)).toBe(3);
    expect(of(1, 2, 3)).toBe(2);
  });
});
