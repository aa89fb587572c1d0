import { describe, expect, test } from "vitest";
import { curveDraws } from "../../../src/stats/weeks/curveDraws.ts";
import { curvePosterior } from "../../../src/stats/weeks/curvePosterior.ts";
import type { SessionEvent } from "../../../src/stats/weeks/sessionEvents.ts";
import data from "./practice-curve-events.json";

describe.each(["step", "break"] as const)("practice curve with a %s against dense matrices", (kind) => {
  const { lapsBefore, laps, mediansMs, event } = data.data[kind];
  const expected = data.expected[kind];
  const history = mediansMs.map((medianMs, i) => ({
    lapsBefore: lapsBefore[i] ?? 0,
    laps,
    medianMs,
    bestMs: medianMs,
  }));
  const events: SessionEvent[] = [{ kind, afterSession: event.afterSession }];
  const posterior = curvePosterior(history, events);

  test("probability of flat", () => {
    expect(posterior.flatChance).toBeCloseTo(expected.flat, 9);
  });

  test("size of the event", () => {
    const count = 20_000;
    const sizes = curveDraws(posterior, history, [], 20260102, count).events[0] ?? new Float64Array();
    for (const share of [0.05, 0.25, 0.5, 0.75, 0.95] as const) {
      const below = sizes.filter((size) => size < expected.event[share]).length / count;
      expect(Math.abs(below - share)).toBeLessThanOrEqual(4 * Math.sqrt((share * (1 - share)) / count));
    }
  });
});
