import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { known, unknown } from "#domain";
import type { LevelGain } from "#stats";
import { certaintyOf, gainInShort, gainReading, gainTitle, sayGainSpan } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const aGain = (fields: Partial<LevelGain> = {}): LevelGain => ({
  change: -2401,
  low: -2650,
  high: -2130,
  chanceFaster: 0.9999,
  from: "2026-08-31",
  to: "2026-11-22",
  sessions: 18,
  ...fields,
});
const said = (fields: Partial<LevelGain>) =>
  gainTitle(known(aGain(fields)), { asOf: "2026-11-23", today: "2026-11-23" });

describe("how much faster the usual lap is", () => {
  it("is said with how sure it is, and how much at least", () => {
    expect(said({})).toBe("Usual lap faster by 2.40 s since 31 Aug, very likely at least 2.13 s");
    expect(said({ change: 300, low: 120, high: 480, chanceFaster: 0.003 })).toBe(
      "Usual lap slower by 0.30 s since 31 Aug, very likely at least 0.12 s",
    );
    expect(said({ change: -80, low: -150, high: -12, chanceFaster: 0.96 })).toBe(
      "Usual lap faster by 0.08 s since 31 Aug, very likely at least 0.01 s",
    );
    expect(said({ change: -200, low: -420, high: 30, chanceFaster: 0.92 })).toBe(
      "Usual lap likely faster by 0.20 s since 31 Aug",
    );
    expect(said({ change: -20, low: -220, high: 180, chanceFaster: 0.6 })).toBe(
      "Usual lap not clearly faster or slower since 31 Aug: it may be chance",
    );
  });

  it("names the days it is of, which are over or go on to today", () => {
    const [gain, today] = [aGain(), "2026-11-29"];
    expect(sayGainSpan(gain, { asOf: today, today })).toBe("since 31 Aug");
    expect(sayGainSpan({ from: "2025-12-30" }, { asOf: today, today })).toBe("since 30 Dec 2025");
    expect(sayGainSpan(gain, { asOf: "2026-11-22", today })).toBe("in the 12 weeks to 22 Nov");
    expect(gainTitle(known(gain), { asOf: "2026-11-22", today })).toBe(
      "Usual lap faster by 2.40 s in the 12 weeks to 22 Nov, very likely at least 2.13 s",
    );
  });

  it("says its least as the near end of the range beside it", () => {
    const odd = known(aGain({ low: -2242, high: -1789, change: -2011 }));
    const on = { asOf: "2026-11-22", today: "2026-11-22" };
    expect(gainTitle(odd, on)).toMatch(/at least 1\.78 s$/);
    expect(gainInShort(odd).certainty).toBe("very likely 1.78 to 2.25 s");
    expect(gainReading(odd)).toMatch(/between 1\.78 and 2\.25 s faster\.$/);
  });

  it("has four words for how sure it is, by the 90 and the 80 % interval", () => {
    expect([0.95, 0.9499, 0.9, 0.8999, 0.5, 0.1001, 0.1, 0.05].map(certaintyOf)).toEqual([
      "very likely",
      "likely",
      "likely",
      "may be chance",
      "may be chance",
      "may be chance",
      "likely",
      "very likely",
    ]);
  });

  it("stands behind its sessions and its interval", () => {
    expect(gainReading(known(aGain()))).toBe(
      "From 18 sessions, good and bad evenings evened out: between 2.13 and 2.65 s faster.",
    );
  });

  it("names what is missing", () => {
    const few = unknown({ needs: 2, of: "session", each: { needs: 5, of: "pace lap" }, has: 1 });
    expect(gainTitle(few, { asOf: "2026-11-22", today: "2026-11-22" })).toBe(
      "Not enough sessions with 5 pace laps each yet: 1 of 2",
    );
  });

  it("is well formed, whatever it is", () => {
    const ms = fc.double({ min: -9000, max: 9000, noNaN: true });
    fc.assert(
      fc.property(ms, ms, ms, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, c, chanceFaster) => {
        const [low = 0, change = 0, high = 0] = [a, b, c].toSorted((x, y) => x - y);
        const gain = known(aGain({ low, change, high, chanceFaster }));
        expectWellFormed(gainTitle(gain, { asOf: "2026-11-22", today: "2026-11-24" }));
        expectWellFormed(gainReading(gain));
        const { figure, certainty } = gainInShort(gain, {
          days: 84,
          asOf: "2026-11-22",
          today: "2026-11-24",
        });
        expectWellFormed(`${figure} ${certainty}`);
      }),
      { seed: 21 },
    );
  });
});
