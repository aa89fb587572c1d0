import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLapTime } from "#domain";
import { type EntryContext, exampleOf, knownTimes, parseEntry, usualLap } from "#entry";
import { aContext } from "./aContext.ts";

describe("the example of what may be typed", () => {
  it("is from the last lap of the run, else of the session, else from what is usual", () => {
    expect(exampleOf(aContext({ runTimes: [83_700, 84_912] }))).toEqual({ typed: "4912", whole: "1:24.912" });
    expect(exampleOf(aContext())).toEqual({ typed: "4000", whole: "1:24.000" });
    expect(exampleOf(aContext({ paceTimes: [] }))).toEqual({ typed: "3456", whole: "1:23.456" });
  });

  it("has the tens of seconds until three laps show what is usual, and all of the time where nothing else is taken", () => {
    const one = { paceTimes: [84_912], runTimes: [84_912], usualMs: 84_912, pbMs: 84_912 };
    expect(exampleOf(aContext(one))?.typed).toBe("24912");
    const far = { runTimes: [140_000] };
    expect(exampleOf(aContext(far))).toEqual({ typed: "2:20.000", whole: "2:20.000" });
  });

  it("is none where no lap is known", () => {
    expect(exampleOf(aContext({ paceTimes: [], usualMs: undefined, pbMs: undefined }))).toBeUndefined();
  });

  it("is taken for its lap without a question, whatever the run", () => {
    const run = fc.record({
      base: fc.integer({ min: 20_000, max: 400_000 }),
      off: fc.array(fc.integer({ min: -900, max: 2_500 }), { minLength: 0, maxLength: 8 }),
      pbOff: fc.option(fc.integer({ min: -2_000, max: 3_000 }), { nil: undefined }),
      displayDecimals: fc.constantFrom(1, 2, 3),
    });
    let short = 0;
    fc.assert(
      fc.property(run, ({ base, off, pbOff, displayDecimals }) => {
        const times = off.map((by) => base + by);
        const pbMs = pbOff === undefined ? undefined : base + pbOff;
        const around = { paceTimes: times, runTimes: times, pbMs };
        const usualMs = usualLap(knownTimes(around), around);
        const context: EntryContext = aContext({ ...around, usualMs, displayDecimals });
        const example = exampleOf(context);
        if (example === undefined) return;
        if (example.typed === example.whole) return;
        short += 1;
        const reading = parseEntry(example.typed, context);
        if (!reading.ok) throw new Error(reading.problem.wrong);
        expect(reading.asks).toEqual([]);
        expect(formatLapTime(reading.lap.ms ?? 0, reading.lap.decimals)).toBe(example.whole);
      }),
      { seed: 41, numRuns: 3_000 },
    );
    expect(short).toBeGreaterThan(1_000);
  });
});
