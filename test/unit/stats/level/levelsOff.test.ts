import { describe, expect, test } from "vitest";
import { levelsOff } from "../../../../src/stats/level/levelsOff.ts";
import { aModel, type ToldCell } from "./aPosterior.ts";

describe("where the level ends, by hand", () => {
  /** Halved each session, a trend of 0.2 % goes on by as much again: from 1 % under the usual lap to 1.2 % under it. */
  const dying = (began: number, end: ToldCell["end"] = {}, more: Partial<ToldCell> = {}): ToldCell => ({
    kind: "moving",
    phi: 0.5,
    end: { l: -0.01, b: -0.002, ll: 1e-12, ...end },
    levels: [
      [began, 0, 0],
      [0, 0, 0],
      [-0.01, 0, 0],
    ],
    ...more,
  });

  test("at the end of a trend that dies away, to the tenth", () => {
    // 90 s less 1.2 % are 88.92 s.
    const ms = { low: 88_900, mid: 88_900, high: 88_900 };
    expect(levelsOff(aModel([dying(0.05)]), 1)).toEqual({ kind: "at", ms });
    // The same where the trend began to move again.
    expect(levelsOff(aModel([dying(0.05, {}, { kind: "started" })]), 1)).toEqual({ kind: "at", ms });
  });

  test("where it is, for a driver who is still", () => {
    expect(levelsOff(aModel([{ end: { l: -0.01, ll: 1e-6 } }]), 1)).toEqual({ kind: "already" });
  });

  test("between the ends of all who still move, by their weight", () => {
    const stopped: ToldCell = { ...dying(0.5), kind: "stopped", since: 2, weight: 0.7 };
    const far = dying(0.5, { b: -0.02 }, { weight: 0.15 });
    // 90 s less 1.2 % and less 3 %.
    expect(levelsOff(aModel([stopped, dying(0.5, {}, { weight: 0.15 }), far]), 1)).toMatchObject({
      kind: "at",
      ms: { low: 87_300, high: 88_900 },
    });
  });

  test("with an interval that must be narrower than half of the gain", () => {
    // A deviation of 0.1 % makes 3.29 of it, 296 ms: more than half of a gain of 560 ms, less than half of one of 630.
    const gain = (ms: number) => levelsOff(aModel([dying(ms / 90_000 - 0.01, { ll: 1e-6 })]), 1);
    expect(gain(560)).toEqual({ kind: "untold" });
    const { kind, ms } = { ms: undefined, ...gain(630) };
    expect(kind).toBe("at");
    expect(ms).toEqual({ low: 88_800, mid: 88_900, high: 89_100 });
  });

  test("by who still moves alone, however many have stopped", () => {
    const stopped: ToldCell = { ...dying(0.05), kind: "stopped", since: 2, weight: 0.7 };
    expect(
      levelsOff(aModel([stopped, dying(0.05, { b: -0.01, bb: 1e-8 }, { weight: 0.3 })]), 1),
    ).toMatchObject({
      kind: "at",
      ms: { mid: 88_200 },
    });
  });

  test("nowhere where half of who moves gets slower", () => {
    expect(levelsOff(aModel([dying(0.05, { b: 0.01 })]), 1)).toEqual({ kind: "rising" });
    const both = (rising: number) =>
      levelsOff(
        aModel([
          dying(0.05, { b: 0.01 }, { weight: rising }),
          dying(0.05, { b: -0.01 }, { weight: 1 - rising }),
        ]),
        1,
      ).kind;
    expect(both(0.55)).toBe("rising");
    expect(both(0.45)).not.toBe("rising");
  });
});
